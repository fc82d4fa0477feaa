import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { DatedCheckpoint } from "./finish-rep.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { handOverShoulder } from "./lead-hand.ts";
import type { Movement } from "./segment-reps.ts";
import { slopeOf } from "./slope-of.ts";
import type { Estimated } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

const varianceSd = ({ covariance }: ShaftInWorld, place: number): number =>
  Math.sqrt(Math.max(0, covariance[place] ?? 0));

/** The lead hand over the lead shoulder, metres. */
export const handAboveShoulder = ({ shaft, leadShoulderZ }: FollowedSample): Estimated | null =>
  shaft === null || leadShoulderZ === null
    ? null
    : {
        value: handOverShoulder(shaft, leadShoulderZ),
        sd: Math.hypot(
          varianceSd(shaft, 12),
          leadShoulderZ.sd,
          swingTuning.lasting.shoulder,
          swingTuning.lasting.hands,
        ),
      };

/** The hands further from the target than the trail thigh, metres. */
const behindThigh = ({ shaft, trailThighX }: FollowedSample): Estimated | null =>
  shaft === null || trailThighX === null
    ? null
    : {
        value: trailThighX.value - shaft.grip.x,
        sd: Math.hypot(varianceSd(shaft, 0), trailThighX.sd, swingTuning.lasting.thigh, swingTuning.lasting.hands),
      };

/** The shaft's elevation, radians. */
export const rise = ({ shaft }: FollowedSample): Estimated | null =>
  shaft === null
    ? null
    : { value: anglesOf(shaft.toHead).elevation, sd: Math.hypot(varianceSd(shaft, 24), swingTuning.lastingElevation) };

/** The checkpoints that the club passed between the last two samples, each with the error of its instant; the shafts are for the caller to look up. */
export function crossingsLast(lately: readonly FollowedSample[], movement: Movement): DatedCheckpoint[] {
  const { poseAge } = swingTuning.live;
  const back = movement.stage === "back" && movement.tops.length === 0;
  const crossings = back
    ? [
        crossLast("takeaway", lately, behindThigh, "up", poseAge),
        crossLast("shaft-level-back", lately, rise, "up"),
        crossLast("arm-level-back", lately, handAboveShoulder, "up", poseAge),
      ]
    : movement.stage === "down"
      ? [
          crossLast("arm-level-down", lately, handAboveShoulder, "down", poseAge),
          crossLast("shaft-level-down", lately, rise, "down"),
        ]
      : [];
  return crossings.flatMap((one) => (one === null ? [] : [one]));
}

/**
 * Null where the quantity did not pass zero between the last two samples, or goes the other way on the whole. How fast it goes there is taken over all of `lately`, for of two pictures it was their noise that had
 * them lie on either side. `leastSd`: milliseconds by which the quantity itself may come late.
 */
function crossLast(
  checkpoint: CheckpointId,
  lately: readonly FollowedSample[],
  quantity: (sample: FollowedSample) => Estimated | null,
  way: "up" | "down",
  leastSd = 0,
): DatedCheckpoint | null {
  const sign = way === "up" ? 1 : -1;
  const series = lately.flatMap((sample) => {
    const told = quantity(sample);
    return told === null ? [] : [{ t: sample.t, value: sign * told.value, sd: told.sd }];
  });
  const after = series[series.length - 1];
  const before = series[series.length - 2];
  if (before === undefined || after === undefined || after.t !== lately[lately.length - 1]?.t) return null;
  if (before.value >= 0 || after.value < 0) return null;
  const t = before.t - (before.value / (after.value - before.value)) * (after.t - before.t);
  const slope = series.length < 3 ? 0 : slopeOf(series);
  return slope <= 0 ? null : { checkpoint, t: milliseconds(t), sd: Math.hypot(leastSd, after.sd / slope), shaft: null };
}
