import type { DemoMotion } from "./demo-motion.ts";

/** Seconds after a swing has come to rest until the next ball lies there. */
const nextBall = 1;

/** Whether a ball lies at its place at `t` seconds: struck at impact, replaced when the swing has come to rest. */
export function ballLiesAt(motion: DemoMotion, t: number): boolean {
  if (!motion.plan.ball) return false;
  return !motion.checkpoints.some(({ checkpoint, rep, t: at }) => {
    const end = motion.reps[rep]?.end ?? 0;
    return checkpoint === "impact" && t * 1000 >= at && t < end + nextBall;
  });
}
