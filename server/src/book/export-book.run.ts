import { existsSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ToldError } from "../told-error.ts";
import { readBookArguments } from "./book-arguments.ts";
import { openBookStore } from "./book-store.ts";
import { exportBook } from "./export-book.ts";

/** `npm run book:export -- --out FILE.json` writes the whole book as JSON; `--copy FILE.book` copies the file while it is in use. */
async function main(): Promise<void> {
  const { book, out, copy } = readBookArguments(
    process.argv.slice(2),
    process.env,
    join(import.meta.dirname, "../../.."),
  );
  if (out === null && copy === null)
    throw new ToldError(
      "Say where to: npm run book:export -- --out FILE.json, or --copy FILE.book for a copy of the file.",
    );
  if (!existsSync(book)) throw new ToldError(`There is no book ${book}: name it with --book FILE or --data FOLDER.`);
  for (const file of [out, copy])
    if (file !== null && existsSync(file))
      throw new ToldError(`${file} is there already and is left as it is: name another file.`);
  const store = openBookStore(book);
  try {
    if (out !== null) writeFileSync(out, exportBook(store));
    if (copy !== null) await store.copyTo(copy);
  } finally {
    store.close();
  }
  process.stdout.write(`Exported ${book} to ${[out, copy].filter((file) => file !== null).join(" and ")}.\n`);
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
});
