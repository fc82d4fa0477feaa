import { readFile } from "node:fs/promises";
import { measureFile } from "../../../client-capture/measure/measure-file.ts";
import { countLabels, type ShaftLabel } from "./count-labels.ts";
import { footage } from "./footage.ts";

/** `npm run accuracy:real-clip`: the labelled frames of the real clip that the pipeline has within 3 degrees. Exits 1 under the goal. */
const goal = 14;
const withinDegrees = 3;

const clip = footage("slow-swing-354x492.mp4");
const labelFile = footage("slow-swing-354x492.labels.json");
if (clip === null || labelFile === null) {
  console.log("skipped: the real clip is not beside this checkout (../shared/footage).");
} else {
  const { shaft, events } = JSON.parse(await readFile(labelFile, "utf8")) as {
    readonly shaft: readonly ShaftLabel[];
    readonly events: { readonly takeaway: number; readonly top: number; readonly impact: number };
  };
  const { report, pace } = await measureFile(clip, null, () => undefined);
  const counted = countLabels(report, shaft, withinDegrees);
  for (const { frame, missDegrees, stated } of counted) {
    const told = stated === null ? "nothing" : `${stated.status}, sd ${stated.sdDegrees.toFixed(2)}`;
    console.log(`frame ${frame}: ${missDegrees === null ? "none" : missDegrees.toFixed(2)} degrees off (${told})`);
  }
  console.log(
    `reps: ${report.reps.length}; labelled takeaway ${events.takeaway}, top ${events.top}, impact ${events.impact}`,
  );
  for (const rep of report.reps) {
    const dated = Object.entries(rep.checkpoints).map(([id, { frame }]) => `${id} ${frame.toFixed(1)}`);
    console.log(`  ${rep.kind}: ${dated.join(", ")}`);
  }
  const hits = counted.filter(({ hit }) => hit).length;
  console.log(
    `${hits} of ${counted.length} labelled frames within ${withinDegrees} degrees (goal: ${goal}); ${(pace.frames / pace.seconds).toFixed(1)} frames a second`,
  );
  process.exitCode = hits >= goal ? 0 : 1;
}
