import { useState } from "react";
import { usualPlaces } from "../session/place-memory.ts";
import { usePhoneState, useSession } from "./use-phone.ts";

/** Where the golfer is: sticks, rod and cautions are remembered there. */
export function PlaceChoice() {
  const session = useSession();
  const places = usePhoneState((state) => state.places);
  const [name, setName] = useState("");
  const names = [...new Set([...usualPlaces, ...Object.keys(places.records), places.current])].toSorted();
  return (
    <div className="place">
      <label>
        Place
        <select
          value={places.current}
          onChange={(event) => {
            session.choosePlace(event.target.value);
          }}
        >
          {names.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </select>
      </label>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          session.choosePlace(name);
          setName("");
        }}
      >
        <input
          aria-label="Name of another place"
          placeholder="Another place"
          maxLength={40}
          value={name}
          onChange={(event) => {
            setName(event.target.value);
          }}
        />
        <button type="submit" disabled={name.trim() === ""}>
          Add
        </button>
      </form>
    </div>
  );
}
