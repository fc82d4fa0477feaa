import type { Film, Shot } from "./film.ts";

/** The film with every shot kept, for pictures that are shown more than once. Asked for in the same order each time, as a film is. */
export function keepShots(film: Film): Film {
  const shots = new Map<number, Shot>();
  return {
    motion: film.motion,
    shoot(t, index) {
      const shot = shots.get(index) ?? film.shoot(t, index);
      shots.set(index, shot);
      return shot;
    },
  };
}
