import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { pixels } from "@overcue/shared-geometry/units";
import {
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlan,
  type DemoRepPlan,
} from "../demo-motion/demo-golfer-settings.ts";
import type { OpenedSource } from "../session/phone-session.ts";
import { rendersInSoftware } from "../workers/renders-in-software.ts";
import { DemoGolferSource } from "./demo-golfer/demo-golfer-source.ts";
import { seededRandom } from "./demo-golfer/seeded-random.ts";

/** Drawn without a graphics processor a full picture takes a second: a smaller show is then better to look at. */
const full = { width: 720, height: 1280, framesPerSecond: 30 };
const small = { width: 450, height: 800, framesPerSecond: 30 };
const lookFor = 1.5;

const rehearsal = (flatToSteep: number, at: CheckpointId): DemoRepPlan => ({
  do: "rep",
  kind: "rehearsal",
  places: placesOf(flatToSteep),
  tempo: slowTempo,
  hold: { at, seconds: lookFor },
});

/** Flat going back and steep coming down, then the reverse, each held for a look; then one full swing. Over and over. */
const reps: readonly DemoRepPlan[] = [
  rehearsal(1, "arm-level-back"),
  rehearsal(1, "arm-level-down"),
  rehearsal(-1, "arm-level-back"),
  rehearsal(-1, "arm-level-down"),
  { do: "rep", kind: "full", places: placesOf(1), tempo: tourTempo },
];

const show: DemoPlan = {
  golfer: usualGolfer,
  club: true,
  ball: true,
  items: reps.flatMap((rep) => [{ do: "still", seconds: 1.5 }, rep] as const),
};

/**
 * The demo golfer, shown to a virtual phone behind it. It has no pace of its own: the run shows it no faster than it moves, and slower
 * where the device cannot draw and measure every picture, so that what is measured does not depend on the device.
 */
export function openDemo(): Promise<OpenedSource> {
  const { station } = usualGolfer;
  const { width, height, framesPerSecond } = rendersInSoftware() ? small : full;
  const source = new DemoGolferSource({
    camera: defaultCamera(pixels(width), pixels(height), station.handed),
    framesPerSecond,
    pace: null,
    rodColour: "orange",
    random: seededRandom(7),
    nextPlan: () => show,
  });
  return Promise.resolve({ source, settings: station, camera: null });
}
