import { readFileSync } from "node:fs";
import { join } from "node:path";
import { ToldError } from "../told-error.ts";
import { readBookArguments } from "./book-arguments.ts";
import { openBookStore } from "./book-store.ts";
import { importBook } from "./import-book.ts";

/** `npm run book:import -- --from FILE.json` takes an exported book into this one, all of it or nothing. */
function main(): void {
  const { book, from } = readBookArguments(process.argv.slice(2), process.env, join(import.meta.dirname, "../../.."));
  if (from === null) throw new ToldError("Say which file: npm run book:import -- --from FILE.json");
  const text = readText(from);
  const store = openBookStore(book);
  try {
    const { golfers, reps } = importBook(store, text);
    process.stdout.write(
      `Imported ${golfers} ${golfers === 1 ? "golfer" : "golfers"} and ${reps} reps into ${book}.\n`,
    );
  } finally {
    store.close();
  }
}

function readText(file: string): string {
  try {
    return readFileSync(file, "utf8");
  } catch {
    throw new ToldError(`The file ${file} cannot be read: check its name.`);
  }
}

try {
  main();
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
