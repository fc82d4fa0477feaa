import type { ConditionName } from "../../scenes/conditions.ts";

/** How many scenes, each of its own seed, make a row: fast reps are short, so they get more of them; and so does clutter, where one line beside the hands can decide a scene. */
export const scenesInRow: Readonly<Record<ConditionName, number>> = {
  "slow+rod": 4,
  "slow+bare": 3,
  "flow 60": 3,
  "full 60 1/500": 8,
  "full 30 1/120": 8,
  "full 240 1/1000": 1,
  dusk: 3,
  night: 4,
  backlight: 4,
  "clutter+decoy": 12,
  "indoor flicker": 3,
  "small 240x384": 3,
  "1080x1920": 1,
  "end-on": 3,
  "left-handed": 4,
  "empty hands": 2,
};
