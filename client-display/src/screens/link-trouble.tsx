import type { LinkState } from "../store/screen-store.ts";

/** The whole screen where there is no way to go on; a strip on top where the relay is only away. */
export function LinkTrouble({ link }: { readonly link: LinkState }) {
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
        <p className="strip-of-trouble" role="alert">
          The relay does not answer. Trying again by itself; if this stays, see whether npm start still runs on the
          laptop.
        </p>
      );
    case "connecting":
    case "connected":
      return null;
  }
}
