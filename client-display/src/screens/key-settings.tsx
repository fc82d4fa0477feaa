import { useParts, useSettings } from "./parts.ts";

export function KeySettings() {
  const { settings } = useParts();
  const letterKeys = useSettings((all) => all.letterKeys);
  const oneButton = useSettings((all) => all.oneButton);
  const verdictSeconds = useSettings((all) => all.verdictSeconds);
  return (
    <section>
      <h2>Keys, remotes, time</h2>
      <label className="chip">
        <input
          type="checkbox"
          checked={letterKeys}
          onChange={(event) => {
            settings.setState({ letterKeys: event.target.checked });
          }}
        />
        Single letters do things (V, N, P, M, S, Q, H)
      </label>
      <label className="chip">
        <input
          type="checkbox"
          checked={oneButton}
          onChange={(event) => {
            settings.setState({ oneButton: event.target.checked });
          }}
        />
        My remote has one button
      </label>
      <label className="field">
        The answer to a rep stays, unless a new rep begins: <output>{verdictSeconds} s</output>
        <input
          type="range"
          min={4}
          max={60}
          step={1}
          value={Math.min(60, verdictSeconds)}
          onChange={(event) => {
            settings.setState({ verdictSeconds: Number(event.target.value) });
          }}
        />
      </label>
    </section>
  );
}
