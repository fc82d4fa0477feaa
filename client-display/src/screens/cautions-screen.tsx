import { cautions } from "@overcue/shared-geometry/wire/cautions";
import { useParts, useSettings } from "./parts.ts";
import { PlaceChoice } from "./place-choice.tsx";

/** Once at each place, before the first swing there. */
export function CautionsScreen() {
  const { settings } = useParts();
  const placeName = useSettings((all) => all.placeName);
  return (
    <main className="panel cautions" data-screen="cautions">
      <h1>Before you swing here</h1>
      <ul>
        {cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <PlaceChoice />
      <button
        type="button"
        className="main-button"
        data-main
        autoFocus
        onClick={() => {
          settings.setState({ cautionsRead: true });
        }}
      >
        Read, at: {placeName}
      </button>
    </main>
  );
}
