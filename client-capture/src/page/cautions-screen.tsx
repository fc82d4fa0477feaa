import { cautions } from "@overcue/shared-geometry/wire/cautions";
import { PlaceChoice } from "./place-choice.tsx";
import { usePhoneState, useSession } from "./use-phone.ts";

/** Once at each place, before the first swing there. The camera runs already. */
export function CautionsScreen() {
  const session = useSession();
  const place = usePhoneState((state) => state.places.current);
  return (
    <main className="reading" data-screen="cautions">
      <h1>Before you swing here</h1>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <PlaceChoice />
      <button
        type="button"
        className="main-action"
        onClick={() => {
          session.readCautions();
        }}
      >
        Read, at: {place}
      </button>
    </main>
  );
}
