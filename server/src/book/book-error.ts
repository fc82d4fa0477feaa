import { ToldError } from "../told-error.ts";

/** What can be wrong with the book's file. */
export type BookFault =
  "full" | "locked" | "corrupt" | "newer" | "not-a-book" | "unwritable" | "other-writer" | "bad-import" | "unknown";

/** An error whose message is one sentence for a person: what is wrong with the book and what to do. Nothing was half done. */
export class BookError extends ToldError {
  readonly fault: BookFault;

  constructor(fault: BookFault, message: string, cause?: unknown) {
    super(message, { cause });
    this.fault = fault;
  }
}

/** SQLite's primary result codes, https://sqlite.org/rescode.html. */
const codes: Readonly<Record<number, BookFault>> = {
  5: "locked",
  6: "locked",
  8: "unwritable",
  10: "unwritable",
  11: "corrupt",
  13: "full",
  14: "unwritable",
  26: "not-a-book",
};

/** The extended code for a unique key that is taken already. */
const constraint = 19;

/** Whatever SQLite threw, as a sentence about the book in `file`. A `BookError` passes through. */
export function toBookError(thrown: unknown, file: string): BookError {
  if (thrown instanceof BookError) return thrown;
  const code = errorCode(thrown);
  const primary = code & 0xff;
  if (primary === constraint) return explain("other-writer", file, thrown);
  return explain(codes[primary] ?? "unknown", file, thrown);
}

export function explain(fault: BookFault, file: string, cause?: unknown): BookError {
  return new BookError(fault, sentences[fault](file, detail(cause)), cause);
}

const sentences: Readonly<Record<BookFault, (file: string, detail: string) => string>> = {
  full: (file) =>
    `The disk is full, so the book ${file} could not be written: nothing in it is lost; free some space and the phone will send the rep again.`,
  locked: (file) =>
    `The book ${file} is held by another program: close that program (a second relay, or a database browser) and try again.`,
  corrupt: (file) =>
    `The book ${file} is damaged and was left as it is: put a copy of it in its place, or move it away to begin a new book.`,
  newer: (file) =>
    `The book ${file} was written by a newer version of Overcue: update Overcue; the book was left as it is.`,
  "not-a-book": (file) =>
    `The file ${file} is not a practice book and was left as it is: move it away or name another file.`,
  unwritable: (file, why) =>
    `The book ${file} cannot be opened for writing${why}: check that its folder exists and may be written to.`,
  "other-writer": (file) =>
    `Another relay has written into the book ${file}: stop one of the two, then start this one again.`,
  "bad-import": (file, why) => `The import into ${file} was refused${why}.`,
  unknown: (file, why) => `The book ${file} could not be used${why}: it was left as it is.`,
};

function errorCode(thrown: unknown): number {
  return typeof thrown === "object" && thrown !== null && "errcode" in thrown && typeof thrown.errcode === "number"
    ? thrown.errcode
    : 0;
}

function detail(cause: unknown): string {
  return cause instanceof Error ? ` (${cause.message})` : "";
}
