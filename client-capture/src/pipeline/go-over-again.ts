import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { smoothShaft } from "../shaft/smooth-shaft.ts";
import type { ShaftEvidence } from "../shaft/track-shaft.ts";
import type { FinishedRep } from "../swing/finish-rep.ts";
import { endSwingClock, runSwingClock, startSwingClock } from "../swing/swing-clock.ts";
import { bodiesBetween } from "./bodies-between.ts";
import { cameraFor } from "./camera-for.ts";
import type { Configuration } from "./configuration.ts";
import { gripRate, gripRateOver } from "./grip-rate.ts";
import { gripsBetween } from "./grips-between.ts";
import { liftAgain } from "./lift-again.ts";
import { liftAlone } from "./lift-alone.ts";
import type { StepOutput } from "./step.ts";
import { swingSample } from "./swing-sample.ts";
import { undoRollingShutter } from "./undo-rolling-shutter.ts";

export interface GoneOver {
  /** One for each picture, in order: what is known of it in the light of those after it. */
  readonly shafts: readonly ShaftInImage[];
  readonly worlds: readonly (ShaftInWorld | null)[];
  readonly reps: readonly FinishedRep[];
}

/**
 * Finished pictures once more, with what came later: the shaft is smoothed both ways in time, lifted again and dated again.
 * `evidence` and `outputs` are of the same pictures in the same order.
 */
export function goOverAgain(
  evidence: readonly ShaftEvidence[],
  outputs: readonly StepOutput[],
  configuration: Configuration,
): GoneOver {
  return goOverShafts(smoothShaft(evidence), outputs, configuration);
}

/** The same from shafts that are smoothed already, one for each output. */
export function goOverShafts(
  smoothed: readonly ShaftInImage[],
  outputs: readonly StepOutput[],
  configuration: Configuration,
): GoneOver {
  const { settings } = configuration;
  const first = outputs[0];
  if (first === undefined) return { shafts: smoothed, worlds: [], reps: [] };
  const shafts = gripsBetween(smoothed, outputs, settings.handed);
  const through = configuration.spread ?? exactCamera(cameraFor(configuration, first.picture));
  const bodies = bodiesBetween(outputs);
  const atOnce = shaftsAtOnce(shafts, first.picture, configuration);
  const worlds = liftAgain(
    atOnce,
    outputs.map(({ swing }, at) => ({ inWorld: bodies[at] ?? null, resting: swing.phase === "still" })),
    through,
    settings,
  );
  const reps: FinishedRep[] = [];
  let clock = startSwingClock(gripToHead(settings));
  outputs.forEach(({ t }, at) => {
    const shaft = atOnce[at];
    if (shaft === undefined) return;
    const inWorld = bodies[at] ?? null;
    const world = worlds[at] ?? null;
    const alone = liftAlone({ shaft, body: inWorld, resting: false }, through, settings, world);
    const timed = runSwingClock(clock, swingSample(t, shaft, world, inWorld, alone, configuration.camera));
    clock = timed.state;
    if (timed.output.finished !== null) reps.push(timed.output.finished);
  });
  const last = endSwingClock(clock);
  if (last !== null) reps.push(last);
  return { shafts, worlds, reps };
}

/** The shafts as pictures read all at once would show them. */
function shaftsAtOnce(
  shafts: readonly ShaftInImage[],
  { width, height }: StepOutput["picture"],
  configuration: Configuration,
): readonly ShaftInImage[] {
  const shutter = configuration.shutter ?? null;
  let from = 0;
  let to = 0;
  return shafts.map((shaft, at) => {
    while ((shafts[from]?.t ?? shaft.t) < shaft.t - gripRateOver) from++;
    while (to < shafts.length && (shafts[to]?.t ?? shaft.t) <= shaft.t + gripRateOver) to++;
    const interval = shaft.t - (shafts[at - 1]?.t ?? Number.NEGATIVE_INFINITY);
    return undoRollingShutter(shaft, gripRate(shafts.slice(from, to)), { shutter, width, height, interval });
  });
}
