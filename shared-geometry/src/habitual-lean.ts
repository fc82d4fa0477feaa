import { filterTuning } from "./filter-tuning.ts";
import type { ShaftMotion } from "./filter-motion.ts";

/**
 * How much the habits of every golf swing speak against a lean, in nats a second (0 or less). The picture alone cannot tell a head in front of the hands
 * from one behind them; golf can: with the hands low the club trails on the side of the ball where the hands are, and with the hands high going
 * back it points towards the target, at the finish away from it. Also, a head is never under the ground. Common practice, no source.
 */
export function habitualLean({ grip, toHead }: ShaftMotion, length: number): number {
  const { lowHands, highHands, handHeightSpread, sideSpread, againstHabit, headUnderGround, againstUnderGround } =
    filterTuning;
  const low = clamp((lowHands - grip.z) / handHeightSpread);
  const high = clamp((grip.z - highHands) / handHeightSpread);
  const side = Math.tanh(grip.x / sideSpread);
  const expected = low * side - high * Math.tanh((grip.x - 0.05) / sideSpread);
  const against = Math.max(0, -expected * toHead.x);
  const below = Math.max(0, -headUnderGround - (grip.z + length * toHead.z));
  return -againstHabit * against - againstUnderGround * below;
}

const clamp = (share: number): number => Math.min(1, Math.max(0, share));
