import { existsSync, readFileSync, writeFileSync } from "node:fs";

/** Where the kept results live. */
const resultsFile = new URL("RESULTS.md", import.meta.url);

const title = "# Measured accuracy\n\nEach section is written by the command it names.\n";

/**
 * Replaces one named section of RESULTS.md (between `<!-- name -->` and `<!-- /name -->`) and leaves the others alone; adds it at the end
 * where it is not there yet. The section opens with its heading, the command and the date.
 */
export function writeSection(name: string, heading: string, command: string, date: Date, body: string): void {
  const open = `<!-- ${name} -->`;
  const close = `<!-- /${name} -->`;
  const day = date.toISOString().slice(0, 10);
  const section = `${open}\n\n## ${heading}\n\n\`${command}\`, ${day}\n\n${body.trim()}\n\n${close}\n`;
  const before = existsSync(resultsFile) ? readFileSync(resultsFile, "utf8") : title;
  const start = before.indexOf(open);
  const end = before.indexOf(close);
  if (start < 0 !== end < 0)
    throw new Error(`RESULTS.md: the section ${name} has lost one of its markers; mend it by hand`);
  const after =
    start < 0
      ? `${before.trimEnd()}\n\n${section}`
      : before.slice(0, start) + section.trimEnd() + before.slice(end + close.length);
  writeFileSync(resultsFile, after);
}

/** The body of one section, or null where it is not there. */
export function readSection(name: string): string | null {
  if (!existsSync(resultsFile)) return null;
  const text = readFileSync(resultsFile, "utf8");
  const start = text.indexOf(`<!-- ${name} -->`);
  const end = text.indexOf(`<!-- /${name} -->`);
  return start < 0 || end < start ? null : text.slice(start, end);
}
