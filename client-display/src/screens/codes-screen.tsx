import { Panel } from "./panel.tsx";
import { useScreen } from "./parts.ts";
import { peersSentence } from "../words/peers-sentence.ts";
import { QrCode } from "./qr-code.tsx";

/** Both codes: the phone's, and the coach's page for whoever stands beside. */
export function CodesScreen() {
  const pairing = useScreen((state) => state.pairing);
  const peers = useScreen((state) => state.peers);
  return (
    <Panel name="codes" title="Pairing codes">
      <p role="status">{peersSentence(peers)}</p>
      {pairing === null ? (
        <p>Asking the relay for the addresses…</p>
      ) : (
        <div className="two-codes">
          <figure>
            <figcaption>Phone with the camera</figcaption>
            <QrCode text={pairing.phone} label="Code that opens the phone’s page" />
          </figure>
          <figure>
            <figcaption>Coach</figcaption>
            <QrCode text={pairing.coach} label="Code that opens the coach’s page" />
          </figure>
        </div>
      )}
      <p className="hint">
        Whoever has a code can see and change this practice until npm start is ended. The next start makes new ones.
      </p>
    </Panel>
  );
}
