import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { scale, subtract, type Vector } from "@overcue/shared-geometry/vector";

const fullSpeed = (1650 * Math.PI) / 180;
const still: Vector = { x: 0, y: 0, z: 0 };

/** How far the tip lags behind the straight shaft at a moment, in the world: against its motion, as the square of the speed. */
export function bowAt(motion: DemoMotion, tMs: number, atFullSpeed: number): Vector {
  if (atFullSpeed === 0) return still;
  const before = motion.at(tMs / 1000 - 0.005).club;
  const after = motion.at(tMs / 1000 + 0.005).club;
  if (!before || !after) return still;
  const turn = scale(subtract(after.toHead, before.toHead), 100);
  const rate = Math.hypot(turn.x, turn.y, turn.z);
  return scale(turn, (-atFullSpeed * rate) / fullSpeed ** 2);
}
