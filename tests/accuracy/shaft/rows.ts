import type { ConditionName } from "../../scenes/conditions.ts";

/** How many scenes, each of its own seed, make a row: fast reps are short, so they get more of them. */
export const scenesInRow: Readonly<Record<ConditionName, number>> = {
  "slow+rod": 2,
  "slow+bare": 2,
  "flow 60": 2,
  "full 60 1/500": 6,
  "full 30 1/120": 6,
  "full 240 1/1000": 1,
  dusk: 2,
  night: 2,
  backlight: 2,
  "clutter+decoy": 2,
  "indoor flicker": 2,
  "small 240x384": 2,
  "1080x1920": 1,
  "end-on": 2,
  "left-handed": 2,
  "empty hands": 2,
};
