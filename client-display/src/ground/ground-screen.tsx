import { LinkTrouble } from "../screens/link-trouble.tsx";
import { PairingScreen } from "../screens/pairing-screen.tsx";
import { useScreen } from "../screens/parts.ts";
import { PracticeScreen } from "../screens/practice-screen.tsx";

/** Which screen the golfer needs now. */
export function GroundScreen() {
  const link = useScreen((state) => state.link);
  const phoneHere = useScreen((state) => (state.peers?.capture ?? 0) > 0);
  if (link.kind === "refused" || link.kind === "unpaired") return <LinkTrouble link={link} />;
  return (
    <>
      <LinkTrouble link={link} />
      {phoneHere ? <PracticeScreen /> : <PairingScreen />}
    </>
  );
}
