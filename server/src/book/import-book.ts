import { parseFile } from "../practice/parse-file.ts";
import type { JournalEntry } from "../practice/journal/events.ts";
import { replay } from "../practice/journal/replay.ts";
import { BookError } from "./book-error.ts";
import { bookFileSchema, type BookFile } from "./book-file.ts";
import type { BookStore } from "./book-store.ts";

/**
 * Takes a whole exported book into this one: all of it or, where anything is wrong, none of it. An empty book becomes the exported one, number for number; in a book that is in
 * use the entries follow those that are there.
 * @throws BookError that names the line and the field, or what is in the way.
 */
export function importBook(store: BookStore, text: string): { readonly golfers: number; readonly reps: number } {
  const parsed = parseFile(text, bookFileSchema, "book");
  if (!parsed.ok) throw new BookError("bad-import", `${parsed.why} Nothing was imported.`);
  const present = store.readJournal();
  refuseClashes(present, parsed.value, store.file);
  const offset = present.at(-1)?.sequence ?? 0;
  const entries = parsed.value.journal.map((entry) => ({ ...entry, sequence: entry.sequence + offset }));
  const { golfers } = replay([...present, ...entries]);
  store.append(entries, parsed.value.trajectories, Object.values(golfers));
  return {
    golfers: entries.filter(({ event }) => event.type === "golfer-added").length,
    reps: entries.filter(({ event }) => event.type === "rep-recorded").length,
  };
}

/** No golfer or rep comes in a second time, and no drill takes the place of another one. */
function refuseClashes(present: readonly JournalEntry[], { journal }: BookFile, file: string): void {
  const there = new Map(present.flatMap((entry) => bringsIn(entry).map(({ key, content }) => [key, content] as const)));
  const clash = journal
    .flatMap(bringsIn)
    .find(({ key, content }) => there.has(key) && (content === null || there.get(key) !== content));
  if (!clash) return;
  throw new BookError(
    "bad-import",
    `${clash.inWords} is in the book ${file} already: delete it there first, or import into a new file. Nothing was imported.`,
  );
}

interface BroughtIn {
  readonly key: string;
  /** What may come twice if it is the same; null for what may not. */
  readonly content: string | null;
  readonly inWords: string;
}

function bringsIn({ event }: JournalEntry): readonly BroughtIn[] {
  if (event.type === "golfer-added")
    return [{ key: `golfer ${event.golfer.id}`, content: null, inWords: `The golfer ${event.golfer.name}` }];
  if (event.type === "rep-recorded")
    return [{ key: `rep ${event.rep.id}`, content: null, inWords: `A rep of the file` }];
  if (event.type === "drill-saved") {
    const { drill } = event;
    return [{ key: `drill ${drill.id}`, content: JSON.stringify(drill), inWords: `Another drill ${drill.id}` }];
  }
  return [];
}
