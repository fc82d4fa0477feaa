import { useState } from "react";
import { useParts, useSettings } from "../screens/parts.ts";

/** Who this coach is, for the others to read beside each change. The relay hears it as the page connects, so it connects anew. */
export function NameField() {
  const { settings } = useParts();
  const known = useSettings((all) => all.personName);
  const [name, setName] = useState(known);
  const changed = name.trim() !== known;
  return (
    <form
      className="new-place"
      onSubmit={(event) => {
        event.preventDefault();
        settings.setState({ personName: name.trim() });
        window.location.reload();
      }}
    >
      <input
        aria-label="Your name, for the others to read"
        placeholder="Your name"
        maxLength={40}
        value={name}
        onChange={(event) => {
          setName(event.target.value);
        }}
      />
      {changed && <button type="submit">Use</button>}
    </form>
  );
}
