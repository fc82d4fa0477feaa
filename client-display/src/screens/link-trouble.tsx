import type { LinkState } from "../store/screen-store.ts";

export interface LinkTroubleProps {
  readonly link: LinkState;
  /** The font for a sentence of so many letters, CSS pixels; the page's own where it is left out. */
  readonly fontFor?: (letters: number) => number;
}

const relayAway =
  "The relay does not answer. Trying again by itself; if this stays, see whether npm start still runs on the laptop.";

/** The whole screen where there is no way to go on; a strip on top where the relay is only away. */
export function LinkTrouble({ link, fontFor }: LinkTroubleProps) {
  switch (link.kind) {
    case "unpaired":
      return (
        <main className="trouble" data-screen="unpaired">
          <h1>This address has no pairing code</h1>
          <p>
            Open the ground screen with the whole address that <code>npm start</code> prints, the part after # included,
            or let npm start open it.
          </p>
        </main>
      );
    case "refused":
      return (
        <main className="trouble" data-screen="refused">
          <h1>The relay refused this page</h1>
          <p>{link.why}</p>
        </main>
      );
    case "lost":
      return (
        <p className="strip-of-trouble" role="alert" style={{ fontSize: fontFor?.(relayAway.length) }}>
          {relayAway}
        </p>
      );
    case "connecting":
    case "connected":
      return null;
  }
}
