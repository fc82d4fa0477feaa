import { elevationOf, handsBehindThigh, leadHandHeight } from "./checkpoint-quantities.ts";
import type { FollowedSample } from "./follow-swing.ts";
import type { Estimated } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

/** Of a sample, null where it is not known; with what the samples of a rep share of the error. */
export type Quantity = (sample: FollowedSample) => Estimated | null;

const { lasting, lastingElevation } = swingTuning;

const withLasting = ({ value, sd }: Estimated, ...lasts: readonly number[]): Estimated => ({
  value,
  sd: Math.hypot(sd, ...lasts),
});

export const handAboveShoulder: Quantity = ({ shaft, leadShoulderZ }) =>
  shaft === null || leadShoulderZ === null
    ? null
    : withLasting(leadHandHeight(shaft, leadShoulderZ), lasting.shoulder, lasting.hands);

export const behindThigh: Quantity = ({ shaft, trailThighX }) =>
  shaft === null || trailThighX === null
    ? null
    : withLasting(handsBehindThigh(shaft, trailThighX), lasting.thigh, lasting.hands);

export const rise: Quantity = ({ shaft }) =>
  shaft === null ? null : withLasting(elevationOf(shaft), lastingElevation);
