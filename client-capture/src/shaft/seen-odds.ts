import type { ShaftTuning } from "./shaft-tuning.ts";

/** What `gain` nats make of a direction's odds: a shaft that is there is not seen in every picture. */
export const seenOdds = (gain: number, { seenChance }: ShaftTuning): number =>
  1 - seenChance + seenChance * Math.exp(gain);
