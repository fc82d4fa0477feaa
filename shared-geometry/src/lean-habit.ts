import { filterTuning } from "./filter-tuning.ts";
import type { Vector } from "./vector.ts";

/**
 * How much the habits of every golf swing speak against a direction of the shaft, in nats a second (0 or less). A picture alone cannot tell a head in front
 * of the hands from one behind them; golf can: with the hands low the club trails on the side of the ball where the hands are, and with the hands
 * high behind the ball it points towards the target. Common practice, no source. Also, a head is never under the ground.
 */
export function leanHabit(grip: Vector, toHead: Vector, length: number, depthSd: number): number {
  const { lowHands, highHands, handHeightSpread, sideSpread, againstHabit, headUnderGround, againstUnderGround } =
    filterTuning;
  const low = clamp((lowHands - grip.z) / handHeightSpread);
  const high = clamp((grip.z - highHands) / handHeightSpread);
  const spread = Math.hypot(sideSpread, depthSd);
  const expected = low * Math.tanh(grip.x / spread) + high * Math.max(0, -Math.tanh((grip.x + 0.1) / spread));
  const against = Math.max(0, -expected * toHead.x);
  const below = Math.max(0, -headUnderGround - (grip.z + length * toHead.z));
  return -againstHabit * against - againstUnderGround * below;
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
