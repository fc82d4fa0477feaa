import { readableAt } from "../sizes/readable-from.ts";
import { viewingOf } from "../store/display-settings.ts";
import { CardRuler } from "./card-ruler.tsx";
import { useParts, useSettings } from "./parts.ts";
import { RadioRow } from "./radio-row.tsx";

export function ScreenSettings() {
  const { settings } = useParts();
  const all = useSettings((state) => state);
  const fitted = readableAt({ width: window.innerWidth, height: window.innerHeight }, viewingOf(all));
  return (
    <section>
      <h2>Screen</h2>
      <RadioRow
        legend="Light"
        name="theme"
        value={all.theme}
        options={[
          { value: "sun", label: "Sun" },
          { value: "dim", label: "Dim room" },
          { value: "night", label: "Night" },
        ]}
        onChange={(theme) => {
          settings.setState({ theme });
        }}
      />
      <RadioRow
        legend="Where the screen lies"
        name="screen-place"
        value={all.screenPlace}
        options={[
          { value: "in-front", label: "In front of me, beyond the ball" },
          { value: "target-side", label: "Beside, towards the target" },
          { value: "away-side", label: "Behind, away from the target" },
        ]}
        onChange={(screenPlace) => {
          settings.setState({ screenPlace });
        }}
      />
      <label className="field">
        From my eyes to the screen: <output>{all.viewingDistance.toFixed(1)} m</output>
        <input
          type="range"
          min={0.5}
          max={6}
          step={0.1}
          value={all.viewingDistance}
          onChange={(event) => {
            settings.setState({ viewingDistance: Number(event.target.value) });
          }}
        />
      </label>
      <p className="hint">
        {fitted.meetsRule
          ? `Words are drawn for ${all.viewingDistance.toFixed(1)} m.`
          : `At this distance the words do not fit: this window can be read up to ${fitted.readableFrom.toFixed(1)} m.`}
      </p>
      <CardRuler />
    </section>
  );
}
