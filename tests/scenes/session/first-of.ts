import type { Sighting } from "./simulate-sightings.ts";

/** The sightings of a session up to `until` milliseconds. */
export function* firstOf(sightings: Iterable<Sighting>, until: number): Generator<Sighting> {
  for (const sighting of sightings) {
    if (sighting.t > until) return;
    yield sighting;
  }
}
