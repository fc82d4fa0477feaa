import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { behindThigh, handAboveShoulder, rise, type Quantity } from "./live-quantities.ts";
import { goesBack, type Movement } from "./segment-reps.ts";
import { slopeOf } from "./slope-of.ts";
import { swingTuning } from "./swing-tuning.ts";

/** The checkpoints that the club passed between the last two samples, each with the error of its instant; the shafts are for the caller to look up. */
export function crossingsLast(samples: readonly FollowedSample[], movement: Movement): DatedCheckpoint[] {
  const { poseAge } = swingTuning.live;
  const crossings = goesBack(movement)
    ? [
        crossLast("takeaway", samples, behindThigh, "up", poseAge),
        crossLast("shaft-level-back", samples, rise, "up"),
        crossLast("arm-level-back", samples, handAboveShoulder, "up", poseAge),
      ]
    : movement.stage === "down"
      ? [
          crossLast("arm-level-down", samples, handAboveShoulder, "down", poseAge),
          crossLast("shaft-level-down", samples, rise, "down"),
        ]
      : [];
  return crossings.flatMap((one) => (one === null ? [] : [one]));
}

/**
 * Null where the quantity did not pass zero between the last two samples, or goes the other way on the whole. How fast it goes there is taken over all of `samples`, for of two pictures it was their noise that had
 * them lie on either side. `leastSd`: milliseconds by which the quantity itself may come late.
 */
function crossLast(
  checkpoint: CheckpointId,
  samples: readonly FollowedSample[],
  quantity: Quantity,
  way: "up" | "down",
  leastSd = 0,
): DatedCheckpoint | null {
  const sign = way === "up" ? 1 : -1;
  const series = samples.flatMap((sample) => {
    const told = quantity(sample);
    return told === null ? [] : [{ t: sample.t, value: sign * told.value, sd: told.sd }];
  });
  const after = series[series.length - 1];
  const before = series[series.length - 2];
  if (before === undefined || after === undefined || after.t !== samples.at(-1)?.t) return null;
  if (before.value >= 0 || after.value < 0) return null;
  const t = before.t - (before.value / (after.value - before.value)) * (after.t - before.t);
  const slope = series.length < 3 ? 0 : slopeOf(series);
  return slope <= 0 ? null : { checkpoint, t: milliseconds(t), sd: Math.hypot(leastSd, after.sd / slope), shaft: null };
}
