import { useParts, useSettings } from "./parts.ts";

export function KeySettings() {
  const { settings } = useParts();
  const letterKeys = useSettings((all) => all.letterKeys);
  const oneButton = useSettings((all) => all.oneButton);
  return (
    <section>
      <h2>Keys and remotes</h2>
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
    </section>
  );
}
