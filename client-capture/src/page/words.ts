import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { RepKind } from "@overcue/shared-geometry/wire/rep";
import type { CertificateState } from "../checks/certificate-check.ts";
import type { AppState } from "../installed/watch-install.ts";
import type { PhoneState } from "../session/phone-store.ts";

/** What the golfer reads when the shaft is not found, and what helps. */
const shaftReasons: Readonly<Record<ShaftReason, string>> = {
  "no-hands": "Hands not seen: step into the picture",
  walking: "Walking: step to the ball",
  "no-line-found": "Shaft not seen: plainer ground or more light helps",
  ambiguous: "Two lines look alike: move what lies behind the club",
  "end-on": "Shaft points at the camera",
  "blurred-away": "Shaft blurred: slower, or more light",
  "out-of-picture": "Club out of the picture: tilt up or step back",
  "hands-hidden": "Hands hidden: camera on the hand line",
  starting: "Looking for the shaft",
};

/** `open`: nobody can tell, so nothing is asked for. */
export type Standing = "good" | "waiting" | "bad" | "open";

export interface Told {
  readonly standing: Standing;
  readonly words: string;
}

export function shaftWords({ finding }: Pick<PhoneState, "finding">): Told {
  switch (finding.shaft) {
    case "tracked":
      return { standing: "good", words: "Shaft found" };
    case "nothing-yet":
      return { standing: "waiting", words: "Starting" };
    case "predicted":
    case "lost":
      // Nothing is wrong.
      if (finding.reason === "walking") return { standing: "waiting", words: shaftReasons.walking };
      return { standing: "bad", words: finding.reason === null ? "Shaft lost" : shaftReasons[finding.reason] };
  }
}

/** Whether the page is kept and can be installed; `lacks`: what is missing and how it is had, empty where nothing is. */
export function appWords(
  certificate: CertificateState,
  kept: boolean,
  app: AppState,
): { readonly told: Told; readonly lacks: string } {
  switch (certificate) {
    case "looking":
      return { told: beingKept, lacks: "" };
    case "trusted":
      if (!kept) return { told: beingKept, lacks: "" };
      return {
        told: {
          standing: "good",
          words: app.standalone ? "Installed, and opens without the relay" : "Kept: opens without the relay",
        },
        lacks: app.standalone || app.install !== null ? "" : browserMenu,
      };
    case "by-hand":
      return {
        told: { standing: "open", words: "Works, but is not kept on this phone" },
        lacks:
          "The certificate was accepted by hand, and a browser keeps and installs pages only where it trusts the certificate. The ground screen names the trust page; it needs doing once.",
      };
    case "cannot-tell":
      return {
        told: { standing: "open", words: "Works, but is not kept on this phone" },
        lacks:
          "This browser does not say why: a private window keeps nothing, and without trust in the certificate no browser keeps a page. The ground screen names the trust page.",
      };
  }
}

const beingKept: Told = { standing: "waiting", words: "Being kept on this phone" };

const browserMenu = "To install it: the browser's menu, then “Install app” or “Add to Home Screen”.";

export function linkWords({ link, peers }: Pick<PhoneState, "link" | "peers">): Told {
  switch (link.is) {
    case "unpaired":
      return { standing: "bad", words: "Not paired: scan the code on the ground screen" };
    case "connecting":
      return { standing: "waiting", words: "Connecting to the relay" };
    case "unreachable":
      return { standing: "bad", words: "Relay out of reach: same network? Trying again" };
    case "refused":
      return { standing: "bad", words: link.why };
    case "connected":
      return {
        standing: "good",
        words: (peers?.display ?? 0) > 0 ? "Paired, ground screen on" : "Paired, no ground screen open",
      };
  }
}

export const repKindWords: Readonly<Record<RepKind, string>> = {
  full: "full swing",
  half: "half swing",
  pump: "pumps",
  flow: "swing from the flow",
  rehearsal: "rehearsal",
};
