import type { StageId } from "@overcue/shared-geometry/wire/practice";

/** Up to which speed of swing a camera can follow the shaft, slowest first. */
export const speedReaches = ["none", "slow", "flow", "full"] as const;
export type SpeedReach = (typeof speedReaches)[number];

/**
 * Turn of the shaft, degrees a second: a slow rehearsal, a swing from the flow, the lead hand's peak in a full swing (1650 +- 211, Marsan et al. 2019,
 * secondary; the other two are the project's own, with the turns per frame and the blurs that follow from them).
 */
const turns: Readonly<Record<Exclude<SpeedReach, "none">, number>> = { slow: 200, flow: 700, full: 1650 };

/** The shaft may turn this far from picture to picture and still be followed, degrees. Larger: faster swings are promised. */
const mostTurn = 30;
/** The shaft may turn this far while the shutter is open and still be a line, degrees. Larger: longer exposures are promised. */
const mostBlur = 3.5;

const farthest = (allows: (turn: number) => boolean): SpeedReach =>
  (["full", "flow", "slow"] as const).find((reach) => allows(turns[reach])) ?? "none";

export const reachOfRate = (framesPerSecond: number): SpeedReach =>
  farthest((turn) => framesPerSecond > 0 && turn / framesPerSecond <= mostTurn);

export const reachOfExposure = (milliseconds: number): SpeedReach =>
  farthest((turn) => (turn * milliseconds) / 1000 <= mostBlur);

export const reachWords: Readonly<Record<SpeedReach, string>> = {
  none: "too slow for any swing",
  slow: "slow rehearsals only",
  flow: "up to flow",
  full: "full speed",
};

const needs: Readonly<Record<StageId, SpeedReach>> = {
  "slow-rehearsal": "slow",
  flow: "flow",
  "added-speed": "full",
  "rod-off": "full",
  ball: "full",
};

/** Whether that is enough for a stage; before the stage is known, for slow rehearsals. */
export const isEnoughFor = (reach: SpeedReach, stage: StageId | null): boolean =>
  speedReaches.indexOf(reach) >= speedReaches.indexOf(needs[stage ?? "slow-rehearsal"]);
