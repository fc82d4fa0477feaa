import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import type { Aim } from "@overcue/shared-geometry/wire/practice";
import type { Rep } from "@overcue/shared-geometry/wire/rep";

/** Mean miss in metres at which the target is drawn in full, and at which it is gone but for its border. */
const fullAt = 0.3;
const goneAt = 0.04;
const repsLookedAt = 5;
const fewestReps = 3;

/**
 * How strongly the band to be felt is drawn, 0 to 1: it fades as the miss of the last reps falls and comes back as it
 * grows (fading after Sigrist et al. 2015, who let a live target fade with the error in rowing). Full until three reps
 * were read at this checkpoint. The miss is counted from the wanted stretch: what is felt is not what should happen.
 */
export function targetStrength(aim: Aim, reps: readonly Rep[]): number {
  const misses = reps.flatMap((rep) => missOf(aim, rep)).slice(-repsLookedAt);
  if (misses.length < fewestReps) return 1;
  const mean = misses.reduce((sum, miss) => sum + miss, 0) / misses.length;
  return Math.min(1, Math.max(0, (mean - goneAt) / (fullAt - goneAt)));
}

function missOf({ checkpoint, wanted }: Aim, rep: Rep): readonly number[] {
  const reading = rep.checkpoints.find((passed) => passed.checkpoint === checkpoint);
  if (reading === undefined) return [];
  const place = placeReadAt(reading.readOuts, checkpoint);
  return place?.defined === true ? [Math.max(0, wanted.from - place.y, place.y - wanted.to)] : [];
}
