import { parseArgs } from "node:util";
import { conditionNames } from "../../scenes/conditions.ts";
import { writeSection } from "../write-section.ts";
import { measureStation, type StationMeasure } from "./measure-station.ts";
import { judgeStations, stationTable } from "./report-station.ts";

/**
 * How near the camera comes that sticks give which nobody pointed at: npm run accuracy:station. `--seeds N` pictures a condition, `--dry` writes nothing.
 * Prints each goal beside its figure; exit code 1 where one is missed.
 */
const { values } = parseArgs({
  options: { seeds: { type: "string", default: "4" }, dry: { type: "boolean", default: false } },
});
const measures: StationMeasure[] = [];
// On a photograph the sticks lie on no ground.
for (const name of conditionNames.filter((each) => each !== "photographs")) {
  for (let seed = 1; seed <= Number(values.seeds); seed++) {
    measures.push(measureStation(name, seed, "stepped away", "exactly"));
    measures.push(measureStation(name, seed, "stepped away", "by hand"));
    measures.push(measureStation(name, seed, "at address", "exactly"));
    for (const { where, laid, found } of measures.slice(-3)) {
      const words = found
        ? `${found.verdict}, ${(100 * found.position).toFixed(1)} cm, ${found.turned.toFixed(2)} degrees, ${found.squaredSds.toFixed(1)} squared sds`
        : "not found";
      console.log(`${name} ${seed}, ${where}, ${laid}: ${words}`);
    }
  }
}
const judged = judgeStations(measures);
const body = [
  `${measures.length} rendered pictures (tests/scenes, every condition with a painted place, seeds 1 to ${values.seeds}). Nothing is known of the lens but that it is a phone's, to 15 %; no tilt sensor;`,
  "no ball marked. *By hand*: 5 mm across, 0.3 degrees of turn, the ball line's stick 3 cm along (one sd each).",
  "",
  stationTable(measures, judged),
].join("\n");
console.log(body);
const missed = judged.filter(({ met }) => !met);
const summary =
  missed.length === 0
    ? `accuracy:station: all ${judged.length} goals met on ${measures.length} pictures.`
    : `accuracy:station: ${missed.length} of ${judged.length} goals missed on ${measures.length} pictures: ${missed.map(({ name }) => name).join("; ")}.`;
if (!values.dry) {
  const heading = "The camera from sticks that nobody pointed at";
  writeSection("station", heading, "npm run accuracy:station", new Date(), `${body}\n\n${summary}`);
}
console.log(summary);
process.exitCode = missed.length === 0 ? 0 : 1;
