import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import { directionOf } from "@overcue/shared-geometry/shaft-angles";
import type { Direction } from "@overcue/shared-geometry/world-shaft";
import { between, type Random } from "../../scenes/random.ts";

type Range = readonly [number, number];

interface Habit {
  readonly x: Range;
  readonly y: Range;
  readonly z: Range;
  /** Degrees. */
  readonly azimuth: Range;
  readonly elevation: Range | "by-butt-point";
}

/** Butt points at the arm-level checkpoints, metres from the ball line: every band from beyond the ball to the feet, flat swings and steep ones. */
const buttPoints: Range = [-0.35, 0.7];

/** Where hands and shaft are at each checkpoint, wide enough for flat and upright swings: common practice, no source. */
const habits: Readonly<Record<CheckpointId, Habit>> = {
  address: { x: [-0.05, 0.1], y: [0.4, 0.6], z: [0.7, 0.85], azimuth: [-97, -83], elevation: [-66, -56] },
  takeaway: { x: [-0.35, -0.15], y: [0.4, 0.6], z: [0.7, 0.85], azimuth: [180, 215], elevation: [-30, -8] },
  "shaft-level-back": { x: [-0.5, -0.3], y: [0.4, 0.65], z: [0.8, 1.0], azimuth: [155, 205], elevation: [-4, 4] },
  "arm-level-back": { x: [-0.5, -0.2], y: [0.65, 1.0], z: [1.1, 1.4], azimuth: [75, 125], elevation: "by-butt-point" },
  top: { x: [-0.25, 0.05], y: [0.8, 1.1], z: [1.6, 1.9], azimuth: [-25, 25], elevation: [-12, 25] },
  "arm-level-down": { x: [-0.5, -0.2], y: [0.65, 1.0], z: [1.1, 1.4], azimuth: [75, 125], elevation: "by-butt-point" },
  "shaft-level-down": { x: [-0.4, -0.1], y: [0.4, 0.65], z: [0.75, 0.95], azimuth: [155, 205], elevation: [-4, 4] },
  impact: { x: [0, 0.15], y: [0.45, 0.7], z: [0.75, 0.95], azimuth: [-100, -80], elevation: [-64, -52] },
};

export interface TrueShaft {
  readonly grip: Point<"world">;
  readonly toHead: Direction;
}

/** A shaft somewhere in a checkpoint's usual range. */
export function randomShaft(checkpoint: CheckpointId, random: Random): TrueShaft {
  const habit = habits[checkpoint];
  const pick = ([low, high]: Range): number => between(random, low, high);
  const degree = Math.PI / 180;
  const grip = worldPoint(pick(habit.x), pick(habit.y), pick(habit.z));
  const azimuth = pick(habit.azimuth) * degree;
  const reach = habit.elevation === "by-butt-point" ? (grip.y - pick(buttPoints)) / Math.sin(azimuth) : null;
  const elevation = habit.elevation === "by-butt-point" ? 0 : pick(habit.elevation) * degree;
  return { grip, toHead: directionOf(azimuth, reach === null ? elevation : Math.atan2(grip.z, reach)) };
}
