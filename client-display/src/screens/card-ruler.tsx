import { assumedPixelsPerMillimetre } from "../sizes/viewing-sizes.ts";
import { useParts, useSettings } from "./parts.ts";

/** The long edge of a bank card: ISO/IEC 7810, format ID-1. */
const cardWidth = 85.6;

/** How large a millimetre is on this screen, by holding a card against it. */
export function CardRuler() {
  const { settings } = useParts();
  const measured = useSettings((all) => all.pixelsPerMillimetre);
  const pixelsPerMillimetre = measured ?? assumedPixelsPerMillimetre;
  return (
    <div className="card-ruler">
      <label className="field">
        Hold a bank card against the bar and make the bar as long as the card:
        <input
          type="range"
          min={2}
          max={12}
          step={0.02}
          value={pixelsPerMillimetre}
          aria-valuetext={`${(pixelsPerMillimetre * cardWidth).toFixed(0)} pixels`}
          onChange={(event) => {
            settings.setState({ pixelsPerMillimetre: Number(event.target.value) });
          }}
        />
      </label>
      <div className="card-bar" style={{ width: pixelsPerMillimetre * cardWidth }} aria-hidden="true" />
      <p className="hint">
        {measured === null
          ? "Not measured yet: 96 pixels to the inch are assumed, which on a tablet or laptop is often too few."
          : `Measured: ${measured.toFixed(2)} pixels to the millimetre.`}
        {measured !== null && (
          <button
            type="button"
            onClick={() => {
              settings.setState({ pixelsPerMillimetre: null });
            }}
          >
            Forget
          </button>
        )}
      </p>
    </div>
  );
}
