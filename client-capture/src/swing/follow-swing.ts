import { radians, type Radians } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { handOverShoulder } from "./lead-hand.ts";
import { chooseSide, type Side } from "./choose-side.ts";
import { swingAngleSd, turnFromLow } from "./swing-angle.ts";
import type { SwingSample } from "./swing-sample.ts";
import { swingTuning } from "./swing-tuning.ts";

/** A sample with its swing angle; null where the shaft was not known, or not well enough to count by, or had none. */
export interface FollowedSample extends SwingSample {
  /** How the club hung: smoothed by its motion while it is slow, as its own picture shows it while it is fast. */
  readonly hanging: ShaftInWorld | null;
  readonly angle: Radians | null;
  readonly angleSd: number;
}

/** What following needs to remember. */
export interface Unrolling {
  readonly angle: Radians | null;
  readonly t: number;
  readonly side: Side | null;
  /** Radians a second, back positive, steadied. */
  readonly rate: number;
  /** Height of the hands, metres, and how fast they rise, metres a second, steadied. */
  readonly handsZ: number | null;
  readonly handsRise: number;
  /** Where the hands were when the club last hung low, metres: height, and place along the target line. */
  readonly lowHands: { readonly z: number; readonly x: number } | null;
}

export const startUnrolling: Unrolling = {
  angle: null,
  t: -Infinity,
  side: null,
  rate: 0,
  handsZ: null,
  handsRise: 0,
  lowHands: null,
};

/**
 * Follows the swing angle through more than half a turn. One camera tells how far the club has turned from hanging, but hardly towards which
 * side: that the hands tell, which are behind the ball going back and past it going through; and whether it has passed the vertical, the hands
 * over the lead shoulder.
 */
export function followSwing(
  state: Unrolling,
  sample: SwingSample,
): { readonly state: Unrolling; readonly output: FollowedSample } {
  // A fast club's turn is smoothed away by the motion about it: then each picture counts for itself where it can.
  const isFast = Math.abs(state.rate) > swingTuning.aloneRate;
  const shaft = isFast ? (sample.alone ?? sample.shaft) : (sample.shaft ?? sample.alone);
  const angleSd = shaft === null ? Infinity : swingAngleSd(shaft);
  const turned = shaft === null || angleSd > swingTuning.mostAngleSd ? null : turnFromLow(shaft.toHead);
  if (turned === null || shaft === null) return { state, output: { ...sample, hanging: shaft, angle: null, angleSd } };
  const { grip } = shaft;
  const { lowHands } = state;
  const seconds = (sample.t - state.t) / 1000;
  const last = seconds * 1000 > swingTuning.longestGap ? { ...startUnrolling, lowHands } : state;
  const turnedBefore = Math.abs(last.angle ?? 0);
  const side = chooseSide({
    before: last.side,
    turnedBefore,
    seconds,
    turned,
    expected:
      last.angle === null || Math.abs(last.rate) < swingTuning.boundRate ? null : last.angle + last.rate * seconds,
    handsPast: grip.x - (lowHands?.x ?? 0),
    // Head towards the target counts only where the lean is known well.
    lean: angleSd < swingTuning.sureAngleSd ? shaft.toHead.x : 0,
  });
  const handsOverShoulder = sample.leadShoulderZ === null ? null : handOverShoulder(shaft, sample.leadShoulderZ);
  const handsRise =
    last.handsZ === null
      ? 0
      : steadied(last.handsRise, (grip.z - last.handsZ) / seconds, seconds, swingTuning.riseMemory);
  const expected = turnedBefore + swingTuning.turnPerRise * handsRise * seconds;
  const far = passedVertical(turned, handsOverShoulder, expected) ? 2 * Math.PI - turned : turned;
  const angle = radians(side === "back" ? far : -far);
  const rate =
    last.angle === null ? 0 : steadied(last.rate, (angle - last.angle) / seconds, seconds, swingTuning.rateMemory);
  const hangs = turned < swingTuning.lowClub && grip.z < (lowHands?.z ?? 1) + 0.2;
  return {
    state: {
      angle,
      t: sample.t,
      side,
      rate,
      handsZ: grip.z,
      handsRise,
      lowHands: hangs ? towards(lowHands, grip) : lowHands,
    },
    output: { ...sample, hanging: shaft, angle, angleSd },
  };
}

/** A rate that forgets what is older than about `memory` seconds. */
function steadied(before: number, now: number, seconds: number, memory: number): number {
  const keep = Math.exp(-seconds / memory);
  return keep * before + (1 - keep) * now;
}

/** Beyond the vertical the club turns on past half a turn; near shoulder height the answer is the one nearer to what the rise of the hands lets expect. */
function passedVertical(turned: number, handsOverShoulder: number | null, expected: number): boolean {
  const { shoulderUnsure, leastPastVertical } = swingTuning;
  if (turned < leastPastVertical) return false;
  if (handsOverShoulder !== null && Math.abs(handsOverShoulder) > shoulderUnsure) return handsOverShoulder > 0;
  return Math.abs(2 * Math.PI - turned - expected) < Math.abs(turned - expected);
}

function towards(
  before: Unrolling["lowHands"],
  { x, z }: { readonly x: number; readonly z: number },
): NonNullable<Unrolling["lowHands"]> {
  return before === null ? { x, z } : { x: 0.95 * before.x + 0.05 * x, z: 0.9 * before.z + 0.1 * z };
}
