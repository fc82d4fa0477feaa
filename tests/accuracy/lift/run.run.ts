import { parseArgs } from "node:util";
import { writeSection } from "../write-section.ts";
import { measureLift } from "./measure-lift.ts";
import { judgeLift, tableOf } from "./report-lift.ts";

/**
 * How well the club is placed in the world: npm run accuracy:lift. `--short` measures a tenth and writes nothing.
 * Prints each goal beside its figure; exit code 1 where one is missed.
 */
const { values } = parseArgs({ options: { short: { type: "boolean", default: false }, scenes: { type: "string" } } });
const scenes = Number(values.scenes ?? (values.short ? 480 : 5600));
const stated = measureLift(scenes, "as-stated");
const byHand = measureLift(Math.round(scenes / 4), "laid-by-hand");
const judged = judgeLift(stated);
const body = tableOf(stated, byHand, judged);
console.log(body);
const missed = judged.filter(({ met }) => !met);
const summary =
  missed.length === 0
    ? `accuracy:lift: all ${judged.length} goals met on ${scenes} scenes.`
    : `accuracy:lift: ${missed.length} of ${judged.length} goals missed on ${scenes} scenes: ${missed.map(({ name }) => name).join("; ")}.`;
if (!values.short)
  writeSection("lift", "Where the club is in the world", "npm run accuracy:lift", new Date(), `${body}\n\n${summary}`);
console.log(summary);
process.exitCode = missed.length === 0 ? 0 : 1;
