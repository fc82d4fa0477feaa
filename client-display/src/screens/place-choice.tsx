import { useState } from "react";
import { moveToPlace } from "../store/display-settings.ts";
import { useParts, useSettings } from "./parts.ts";

/** Where the golfer is: what was set and read there is remembered. */
export function PlaceChoice() {
  const { settings } = useParts();
  const placeName = useSettings((all) => all.placeName);
  const otherPlaces = useSettings((all) => all.otherPlaces);
  const [newName, setNewName] = useState("");
  const go = (name: string): void => {
    settings.setState((all) => moveToPlace(all, name));
    setNewName("");
  };
  const names = [...new Set([placeName, ...Object.keys(otherPlaces), "Range", "Home mat"])].sort();
  return (
    <fieldset className="place-choice">
      <legend>Place</legend>
      {names.map((name) => (
        <label key={name} className="chip">
          <input
            type="radio"
            name="place"
            checked={name === placeName}
            onChange={() => {
              go(name);
            }}
          />
          {name}
        </label>
      ))}
      <form
        className="new-place"
        onSubmit={(event) => {
          event.preventDefault();
          go(newName);
        }}
      >
        <input
          aria-label="Name of another place"
          placeholder="Another place"
          maxLength={40}
          value={newName}
          onChange={(event) => {
            setNewName(event.target.value);
          }}
        />
        <button type="submit" disabled={newName.trim() === ""}>
          Add
        </button>
      </form>
    </fieldset>
  );
}
