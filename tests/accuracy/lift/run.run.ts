import { parseArgs } from "node:util";
import { writeSection } from "../write-section.ts";
import { exactLaying, measureLift } from "./measure-lift.ts";
import { judgeLift, tableOf } from "./report-lift.ts";
import { measureReps } from "./reps/measure-reps.ts";
import { judgeReps, repsTable } from "./reps/report-reps.ts";

/**
 * How well the club is placed in the world, in one picture and over whole reps: npm run accuracy:lift. `--short` measures a tenth and writes nothing.
 * Prints each goal beside its figure; exit code 1 where one is missed.
 */
const { values } = parseArgs({
  options: { short: { type: "boolean", default: false }, scenes: { type: "string" }, reps: { type: "string" } },
});
const scenes = Number(values.scenes ?? (values.short ? 480 : 5600));
const reps = Number(values.reps ?? (values.short ? 36 : 216));

const stated = measureLift(scenes, "as-stated");
const byHand = measureLift(Math.round(scenes / 4), "laid-by-hand");
const ofPictures = judgeLift(stated);
const pictures = tableOf(stated, byHand, ofPictures);
console.log(pictures);
const measured = measureReps(reps, exactLaying);
const ofReps = judgeReps(measured);
const whole = repsTable(measured, reps, ofReps);
console.log(whole);

const judged = [...ofPictures, ...ofReps];
const missed = judged.filter(({ met }) => !met);
const size = `${scenes} scenes and ${reps} reps`;
const summary =
  missed.length === 0
    ? `accuracy:lift: all ${judged.length} goals met on ${size}.`
    : `accuracy:lift: ${missed.length} of ${judged.length} goals missed on ${size}: ${missed.map(({ name }) => name).join("; ")}.`;
if (!values.short) {
  const command = "npm run accuracy:lift";
  writeSection("lift", "Where the club is in the world", command, new Date(), `${pictures}\n\n${summary}`);
  writeSection("lift-reps", "Where the club is over a whole rep", command, new Date(), whole);
}
console.log(summary);
process.exitCode = missed.length === 0 ? 0 : 1;
