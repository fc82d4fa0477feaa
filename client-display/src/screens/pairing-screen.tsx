import { QrCode } from "./qr-code.tsx";
import { useScreen } from "./parts.ts";
import { peersSentence } from "../words/peers-sentence.ts";

/** Shown until a phone is there: the code to scan, and what to do when the phone warns about the address. */
export function PairingScreen() {
  const pairing = useScreen((state) => state.pairing);
  const trust = pairing?.trust ?? null;
  const peers = useScreen((state) => state.peers);
  return (
    <main className="pairing" data-screen="pairing">
      <section className="pairing-words">
        <h1>Pair the phone</h1>
        <ol>
          <li>Join the phone to the same network as this screen.</li>
          <li>Scan the code with its camera and open the page.</li>
          <li>Stand it behind you on its tripod, lens at hand height.</li>
        </ol>
        {trust !== null && (
          <p className="hint">
            If the phone warns that it does not know this address, that is this installation’s own certificate. Open{" "}
            <span className="address">{trust}</span> on the phone once to trust it, or continue past the warning.
          </p>
        )}
        <p className="status" role="status">
          {peersSentence(peers)}
        </p>
      </section>
      {pairing === null ? (
        <p className="hint">Asking the relay for the address…</p>
      ) : (
        <figure className="pairing-code">
          <QrCode text={pairing.phone} label="Code that opens the phone’s page" />
          <figcaption className="address">{withoutFragment(pairing.phone)}</figcaption>
        </figure>
      )}
    </main>
  );
}

const withoutFragment = (address: string): string => address.replace(/#.*$/, "");
