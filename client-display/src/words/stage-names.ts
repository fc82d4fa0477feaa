import type { StageId } from "@overcue/shared-geometry/wire/practice";

export const stageNames: Readonly<Record<StageId, string>> = {
  "slow-rehearsal": "slow rehearsal",
  flow: "flow",
  "added-speed": "added speed",
  "rod-off": "rod off",
  ball: "ball",
};
