import { z } from "zod";
import { bookFileSchema } from "./book-file.ts";

/** The published form of the export file's schema (`book.schema.json` beside this file is this, written out). */
export function bookJsonSchema(): object {
  return { title: "Overcue practice book, exported", ...z.toJSONSchema(bookFileSchema) };
}
