import type { Calibration } from "@overcue/shared-geometry/camera";
import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { RepKind } from "@overcue/shared-geometry/wire/rep";
import type { PhoneState } from "../session/phone-store.ts";

/** What the golfer reads when the shaft is not found, and what helps. */
const shaftReasons: Readonly<Record<ShaftReason, string>> = {
  "no-hands": "Hands not seen: step into the picture",
  "no-line-found": "Shaft not seen: plainer ground or more light helps",
  ambiguous: "Two lines look alike: move what lies behind the club",
  "end-on": "Shaft points at the camera",
  "blurred-away": "Shaft blurred: slower, or more light",
  "out-of-picture": "Club out of the picture: tilt up or step back",
  "hands-hidden": "Hands hidden: camera on the hand line",
  starting: "Looking for the shaft",
};

export type Standing = "good" | "waiting" | "bad";

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
      return { standing: "bad", words: finding.reason === null ? "Shaft lost" : shaftReasons[finding.reason] };
  }
}

export function bodyWords({ finding, pose }: Pick<PhoneState, "finding" | "pose">): Told {
  if (pose === null) return { standing: "waiting", words: "Pose model is warming up" };
  return finding.hands === "lost"
    ? { standing: "bad", words: "Nobody found yet" }
    : { standing: "good", words: "Body found" };
}

export function cameraWords(calibration: Calibration): Told {
  switch (calibration) {
    case "station":
      return { standing: "good", words: "Camera known from the sticks" };
    case "demo":
      return { standing: "good", words: "Demo camera" };
    case "suspect":
      return { standing: "bad", words: "Camera or sticks moved: set the sticks again" };
    case "uncalibrated":
      return { standing: "waiting", words: "Uncalibrated: sticks not set" };
  }
}

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
