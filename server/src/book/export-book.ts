import type { BookFile } from "./book-file.ts";
import type { BookStore } from "./book-store.ts";

/** The whole book as one JSON text, one entry a line so that a person can find their way in it. What import reads gives the same text again. */
export function exportBook(store: BookStore): string {
  const file: BookFile = {
    format: "overcue-book/1",
    journal: [...store.readJournal()],
    trajectories: [...store.readTrajectories()],
  };
  const lines = (items: readonly unknown[]): string => items.map((item) => `    ${JSON.stringify(item)}`).join(",\n");
  return `{
  "format": ${JSON.stringify(file.format)},
  "journal": [
${lines(file.journal)}
  ],
  "trajectories": [
${lines(file.trajectories)}
  ]
}
`;
}
