import { parseArgs } from "node:util";
import { writeSection } from "../write-section.ts";
import { figuresOf } from "./figures.ts";
import { judgeRows } from "./judge-rows.ts";
import { methods } from "./judge-scene.ts";
import { notes } from "./notes.ts";
import { judgeRealClips } from "./real-clips.ts";
import { rowNames, seedsInRow, type RowName } from "./rows.ts";
import { countGoals, missedGoals, tableOf, type Line } from "./table.ts";

/**
 * npm run accuracy:shaft [-- --all] [--row NAME] [--seed N] [--short] [--most N] [--workers N]
 * A third of the scenes of each row, in ten minutes; with --all every one, in half an hour: that table goes to RESULTS.md, for half a percent of a third is a picture or two.
 * A row that is asked for is judged by all of its scenes. The row "real" is the real clips beside the checkout. --short takes one scene a row, --most so many at most.
 */
const { values } = parseArgs({
  options: {
    all: { type: "boolean", default: false },
    row: { type: "string" },
    seed: { type: "string" },
    short: { type: "boolean", default: false },
    most: { type: "string" },
    workers: { type: "string", default: "2" },
  },
});
const everyRow = values.row === undefined && values.seed === undefined && !values.short;
const all = values.all || values.row !== undefined;
const wanted = rowNames.filter((name) => values.row === undefined || name === values.row);
if (wanted.length === 0 && values.row !== "real") {
  console.error(`There is no row "${values.row ?? ""}". Rows: ${rowNames.join(", ")}, real.`);
  process.exit(2);
}
const seedsOf = (name: RowName): readonly number[] => {
  if (values.seed !== undefined) return [Number(values.seed)];
  return seedsInRow(name, all).slice(0, values.short ? 1 : Number(values.most ?? Infinity));
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
const real = everyRow || values.row === "real" ? await judgeRealClips() : [];
const missed = [...missedGoals(told), ...real.flatMap((result) => result.missed)];
const goals = countGoals(told) + real.reduce((sum, result) => sum + result.goals, 0);
const realLines = real.flatMap((result) => result.lines).join("\n");
const summary = `accuracy:shaft: ${goals - missed.length} of ${goals} goals met over ${scenes.length} scenes${missed.length > 0 ? "; missed ones are marked" : ""}.`;
console.log(`${table}\n\n${realLines}\n\n${missed.map((text) => `missed: ${text}`).join("\n")}\n${summary}`);
if (everyRow && all && values.most === undefined) {
  writeSection(
    "shaft",
    "The shaft in the picture",
    "npm run accuracy:shaft -- --all",
    new Date(),
    `${notes}\n\n${table}\n\n${realLines}\n\n${summary}`,
  );
}
process.exitCode = missed.length > 0 ? 1 : 0;
