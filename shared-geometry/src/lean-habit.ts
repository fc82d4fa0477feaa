import { filterTuning } from "./filter-tuning.ts";
import type { Vector } from "./vector.ts";

/**
 * How much the habits of every golf swing speak against a direction of the shaft, in nats a second (0 or less). A picture alone cannot tell a head in front
 * of the hands from one behind them; golf can: with the hands low and gone back the head has gone back farther, with the hands low and ahead of the ball it does not
 * trail far, and with the hands high behind the ball it points towards the target. Common practice, no source. Also, a head is never under the ground.
 */
export function leanHabit(grip: Vector, toHead: Vector, length: number, depthSd: number): number {
  const {
    lowHands,
    highHands,
    handHeightSpread,
    sideSpread,
    headBefore,
    againstHabit,
    headUnderGround,
    againstUnderGround,
  } = filterTuning;
  const low = clamp((lowHands - grip.z) / handHeightSpread);
  const high = clamp((grip.z - highHands) / handHeightSpread);
  const side = Math.tanh(grip.x / Math.hypot(sideSpread, depthSd));
  const ahead = Math.max(0, -low * side * toHead.x);
  const behind = Math.max(0, low * (toHead.x - headBefore * side));
  const turned = Math.max(0, -Math.tanh((grip.x + 0.1) / Math.hypot(sideSpread, depthSd))) * high;
  const against = (side > 0 ? ahead : behind) + Math.max(0, -turned * toHead.x);
  const below = Math.max(0, -headUnderGround - (grip.z + length * toHead.z));
  return -againstHabit * against - againstUnderGround * below;
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
