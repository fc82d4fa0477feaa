import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import {
  evenPlaces,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlanItem,
  type DemoRepKind,
  type DemoTempo,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import { runSwingClock, startSwingClock, type SwingClockOutput } from "@overcue/client-capture/swing/swing-clock";
import type { SwingSample } from "@overcue/client-capture/swing/swing-sample";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { seededRandom } from "../scenes/random.ts";
import { noNoise, trueSamples, type SampleNoise } from "./true-samples.ts";

export const still = (seconds: number): DemoPlanItem => ({ do: "still", seconds });

export const rep = (kind: DemoRepKind, tempo: DemoTempo = tourTempo): DemoPlanItem => ({
  do: "rep",
  kind,
  places: evenPlaces,
  tempo,
});

/** A slow rehearsal whose club is held at a checkpoint. */
export const heldRep = (at: CheckpointId, seconds: number): DemoPlanItem => ({
  ...{ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo },
  hold: { at, seconds },
});

/** When a motion or a rep first passes a checkpoint, milliseconds; not a number where it does not. */
export const timeOf = (
  of: { readonly checkpoints: readonly { readonly checkpoint: CheckpointId; readonly t: number }[] } | null | undefined,
  id: CheckpointId,
): number => of?.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? Number.NaN;

/** The usual golfer, who stands still for a while before and after. */
export const motionOf = (...items: DemoPlanItem[]): DemoMotion =>
  demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [still(1.2), ...items, still(1.5)] });

/** What the swing clock answers to a motion's samples, each `spoil`ed before it is given. */
export function runClock(
  motion: DemoMotion,
  framesPerSecond = 60,
  noise: SampleNoise = noNoise,
  spoil: (sample: SwingSample) => SwingSample = (sample) => sample,
): (SwingClockOutput & { t: number })[] {
  let state = startSwingClock(gripToHead(usualGolfer.station));
  return Array.from(trueSamples(motion, framesPerSecond, noise, seededRandom(7)), (sample) => {
    const ran = runSwingClock(state, spoil(sample));
    state = ran.state;
    return { ...ran.output, t: sample.t };
  });
}

export const finishedOf = (outputs: readonly SwingClockOutput[]): FinishedRep[] =>
  outputs.flatMap((output) => (output.finished === null ? [] : [output.finished]));

/** The sample where the club is out of sight. */
export const outOfSight = (sample: SwingSample): SwingSample => ({
  ...sample,
  shaft: null,
  alone: null,
  tracked: false,
  inPicture: null,
});
