import { join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { ToldError } from "../told-error.ts";

/** What the export and import commands were asked for. */
export interface BookArguments {
  /** The book's file: `--book FILE`, else the one in the data folder (`--data FOLDER`, OVERCUE_DATA, ./data). */
  readonly book: string;
  readonly out: string | null;
  readonly copy: string | null;
  readonly from: string | null;
}

/** @throws ToldError for an option that there is not. */
export function readBookArguments(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
  checkout: string,
): BookArguments {
  const text = { type: "string" } as const;
  try {
    const { values } = parseArgs({
      args: [...args],
      options: { book: text, data: text, out: text, copy: text, from: text },
    });
    const folder = resolve(checkout, values.data ?? environment["OVERCUE_DATA"] ?? "data");
    return {
      book: values.book === undefined ? join(folder, "practice.book") : resolve(values.book),
      out: values.out ?? null,
      copy: values.copy ?? null,
      from: values.from ?? null,
    };
  } catch (thrown) {
    const why = thrown instanceof Error ? thrown.message : String(thrown);
    throw new ToldError(
      `${why} Options: --book FILE or --data FOLDER; to export --out FILE.json or --copy FILE.book; to import --from FILE.json.`,
    );
  }
}
