import { defaultStation } from "@overcue/shared-geometry/default-station";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { seconds, type Metres, type Seconds } from "@overcue/shared-geometry/units";
import { metres } from "@overcue/shared-geometry/units";

/** Who is demonstrated and with what. The golfer is invented; lengths in metres, angles in degrees. */
export interface DemoGolfer {
  readonly height: Metres;
  /** Club, rod beyond the butt, toe and heel distances. */
  readonly station: StationSettings;
  /** Angle of the shaft to the ground at address, seen along the target line. */
  readonly lieDegrees: number;
}

/** A man of middle height with a 7-iron of usual length and lie (CHECK values: 37 in, 62 degrees). */
export const usualGolfer: DemoGolfer = {
  height: metres(1.78),
  station: defaultStation("7-iron", "right"),
  lieDegrees: 62,
};

/**
 * Where the club passes at the checkpoints: the motion goes exactly through these.
 * Metres on the ground from the ball line towards the heels (negative: beyond the ball).
 */
export interface DemoPlaces {
  /** Head dropped to the ground, hands at the trail thigh. */
  readonly headAtTakeaway: number;
  readonly headAtShaftLevelBack: number;
  /** Where the line out of the butt meets the ground, lead arm level. */
  readonly buttBack: number;
  readonly buttDown: number;
  readonly headAtShaftLevelDown: number;
}

export const evenPlaces: DemoPlaces = {
  headAtTakeaway: 0.02,
  headAtShaftLevelBack: 0.12,
  buttBack: 0.0,
  buttDown: 0.0,
  headAtShaftLevelDown: 0.14,
};

/**
 * A swing by one number: 1 is plainly flat going back and steep coming down, -1 the reverse, 0 even. Linear in between and beyond.
 * A flat way back drags the head inside; a steep way down throws it out towards the ball line.
 */
export function placesOf(flatToSteep: number): DemoPlaces {
  return {
    headAtTakeaway: evenPlaces.headAtTakeaway + 0.12 * flatToSteep,
    headAtShaftLevelBack: evenPlaces.headAtShaftLevelBack + 0.16 * flatToSteep,
    buttBack: evenPlaces.buttBack - 0.32 * flatToSteep,
    buttDown: evenPlaces.buttDown + 0.3 * flatToSteep,
    headAtShaftLevelDown: evenPlaces.headAtShaftLevelDown - 0.14 * flatToSteep,
  };
}

/** Start of the backswing to the top, top to impact. */
export interface DemoTempo {
  readonly backswing: Seconds;
  readonly downswing: Seconds;
}

/** Mean of tour players: Grober and Cholewicki, Towards a Biomechanical Understanding of Tempo in the Golf Swing. */
export const tourTempo: DemoTempo = { backswing: seconds(0.8), downswing: seconds(0.267) };
/** Between a slow rehearsal and full speed. */
export const flowTempo: DemoTempo = { backswing: seconds(1.3), downswing: seconds(0.62) };
export const slowTempo: DemoTempo = { backswing: seconds(3), downswing: seconds(2) };

/**
 * - `full`: from a still address to a finish. `rehearsal`: the same, stopped waist-high after impact (no full follow-through with a rod).
 * - `half`: turns round just above lead arm level. `pump`: down to arm level and back up twice, then through.
 * - `flow`: starts with the club held forward of the ball.
 * - `continuous`: back and forth without stopping, `swings` times; each is a rep of its own.
 */
export type DemoRepKind = "full" | "half" | "pump" | "flow" | "rehearsal" | "continuous";

export interface DemoRepPlan {
  readonly do: "rep";
  readonly kind: DemoRepKind;
  readonly places: DemoPlaces;
  readonly tempo: DemoTempo;
  /** Stop at this checkpoint for that long. Not for `pump` and `continuous`. */
  readonly hold?: { readonly at: CheckpointId; readonly seconds: number };
  /** For `continuous`: how many swings, 2 unless said. */
  readonly swings?: number;
  /** Whole millimetres or so of natural variation of the hands' path, metres per axis at each checkpoint; the places stay exact. */
  readonly handsShift?: { readonly x: number; readonly y: number; readonly z: number };
}

/** What golfers do between reps; none of it is a rep. */
export type DemoDistraction =
  "waggle" | "practice-brush" | "tee-up" | "walk-away-and-back" | "re-grip" | "lean-on-club" | "look-up";

export type DemoPlanItem =
  | DemoRepPlan
  | { readonly do: "still"; readonly seconds: number }
  | { readonly do: "distraction"; readonly what: DemoDistraction };

/** `club: false`: the same movements with empty hands. `ball: false`: a mat or lawn without one. */
export interface DemoPlan {
  readonly golfer: DemoGolfer;
  readonly club: boolean;
  readonly ball: boolean;
  readonly items: readonly DemoPlanItem[];
}
