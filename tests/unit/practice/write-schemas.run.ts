import { writeFileSync } from "node:fs";
import { bookJsonSchema } from "@overcue/server/book/book-json-schema";
import { drillJsonSchema } from "@overcue/server/practice/drill/drill-json-schema";

/** `npx node tests/unit/practice/write-schemas.run.ts` writes the published schemas anew after a change of the shapes. */
const server = new URL("../../../server/src/", import.meta.url);
writeFileSync(new URL("practice/drill/drill.schema.json", server), `${JSON.stringify(drillJsonSchema(), null, 2)}\n`);
writeFileSync(new URL("book/book.schema.json", server), `${JSON.stringify(bookJsonSchema(), null, 2)}\n`);
