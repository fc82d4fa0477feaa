import type { Golfer, JournalEntry } from "./events.ts";
import type { Practice } from "./state.ts";

/** How the invented golfer is called wherever a golfer's name stands. */
export const demoGolferName = "Demo golfer (invented)";

/** The invented golfer, whose book takes what the phone only demonstrates; null while nothing was demonstrated yet. */
export function demoGolfer({ golfers }: Practice): Golfer | null {
  return Object.values(golfers).find(({ golfer }) => golfer.invented === true)?.golfer ?? null;
}

/** The person who practised last: the one chosen last who is not invented and still in the book. Null where nobody is. */
export function lastPerson(practice: Practice, journal: readonly JournalEntry[]): string | null {
  const isPerson = (id: string | null): id is string => {
    const book = id === null ? undefined : practice.golfers[id];
    return book !== undefined && book.golfer.invented !== true;
  };
  if (isPerson(practice.current)) return practice.current;
  const chosen = journal.findLast(({ event, golferId }) => event.type === "golfer-chosen" && isPerson(golferId));
  return chosen?.golferId ?? Object.keys(practice.golfers).find(isPerson) ?? null;
}
