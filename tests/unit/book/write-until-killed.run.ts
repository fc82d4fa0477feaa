import { randomUUID } from "node:crypto";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { flatToSteepGolfer, makeRep } from "../../fakes/golfer-model.ts";

/** Adds reps to the book named on the command line without end, and says each id once it is acknowledged. For the test that kills it. */
const book = openPracticeBook(process.argv[2] ?? "", { now: () => Date.now(), newId: randomUUID });
for (;;) {
  const id = randomUUID();
  await book.addRep(makeRep(flatToSteepGolfer, book.state(), Date.now(), id));
  process.stdout.write(`${id}\n`);
}
