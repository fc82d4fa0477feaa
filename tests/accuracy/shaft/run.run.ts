import { parseArgs } from "node:util";
import { writeSection } from "../write-section.ts";
import { figuresOf } from "./figures.ts";
import { judgeRows } from "./judge-rows.ts";
import { methods } from "./judge-scene.ts";
import { notes } from "./notes.ts";
import { judgeRealClips } from "./real-clips.ts";
import { rowNames, scenesInRow, type RowName } from "./rows.ts";
import { countGoals, missedGoals, tableOf, type Line } from "./table.ts";

/**
 * npm run accuracy:shaft [-- --row NAME] [--seed N] [--short] [--most N] [--workers N]
 * The row "real" is the real clips beside the checkout. Without --row, --seed and --short the table goes to RESULTS.md; --most takes so many scenes a
 * row at most, and says so there.
 */
const { values } = parseArgs({
  options: {
    row: { type: "string" },
    seed: { type: "string" },
    short: { type: "boolean", default: false },
    most: { type: "string" },
    workers: { type: "string", default: "2" },
  },
});
const whole = values.row === undefined && values.seed === undefined && !values.short;
const wanted = rowNames.filter((name) => values.row === undefined || name === values.row);
if (wanted.length === 0 && values.row !== "real") {
  console.error(`There is no row "${values.row ?? ""}". Rows: ${rowNames.join(", ")}, real.`);
  process.exit(2);
}
const seedsOf = (name: RowName): readonly number[] => {
  if (values.seed !== undefined) return [Number(values.seed)];
  const most = values.short ? 1 : Number(values.most ?? Infinity);
  return Array.from({ length: Math.min(most, scenesInRow[name]) }, (_, index) => index + 1);
};
const scenes = wanted.flatMap((name) => seedsOf(name).map((seed) => ({ name, seed })));
const rows = await judgeRows(scenes, Number(values.workers), (done, of, task) => {
  process.stderr.write(`\r${done}/${of} scenes, last ${task.names.join(", ")} ${task.seed}        `);
});
process.stderr.write("\n");
const lines: Line[] = wanted.flatMap((name) => {
  const tallies = rows.get(name);
  return tallies ? methods.map((method) => ({ name, method, figures: figuresOf(tallies[method]) })) : [];
});
const told = lines.filter((line) => line.figures.frames > 0);
const table = tableOf(told);
const real = whole || values.row === "real" ? await judgeRealClips() : [];
const missed = [...missedGoals(told), ...real.flatMap((result) => result.missed)];
const goals = countGoals(told) + real.reduce((sum, result) => sum + result.goals, 0);
const realLines = real.flatMap((result) => result.lines).join("\n");
const summary = `accuracy:shaft: ${goals - missed.length} of ${goals} goals met over ${scenes.length} scenes${missed.length > 0 ? "; missed ones are marked" : ""}.`;
console.log(`${table}\n\n${realLines}\n\n${missed.map((text) => `missed: ${text}`).join("\n")}\n${summary}`);
if (whole) {
  writeSection(
    "shaft",
    "The shaft in the picture",
    values.most === undefined ? "npm run accuracy:shaft" : `npm run accuracy:shaft -- --most ${values.most}`,
    new Date(),
    `${notes}\n\n${table}\n\n${realLines}\n\n${summary}`,
  );
}
process.exitCode = missed.length > 0 ? 1 : 0;
