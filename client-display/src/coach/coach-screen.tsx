import { LinkTrouble } from "../screens/link-trouble.tsx";
import { useScreen } from "../screens/parts.ts";
import { peersSentence } from "../words/peers-sentence.ts";

/** How the practice stands, for the coach beside the student. */
export function CoachScreen() {
  const link = useScreen((state) => state.link);
  const peers = useScreen((state) => state.peers);
  const practice = useScreen((state) => state.practice);
  if (link.kind === "refused" || link.kind === "unpaired") return <LinkTrouble link={link} />;
  return (
    <main className="trouble" data-screen="coach">
      <LinkTrouble link={link} />
      <h1>{practice === null ? "Coach" : practice.drill.name}</h1>
      <p role="status">{peersSentence(peers)}</p>
    </main>
  );
}
