import { seconds, type Seconds } from "@overcue/shared-geometry/units";
import type { DemoPlan } from "./demo-golfer-settings.ts";
import type { DemoPose } from "./demo-pose.ts";
import type { DemoCheckpoint } from "./demo-truth.ts";
import { findCheckpoints } from "./find-checkpoints.ts";
import { keyPath } from "./key-path.ts";
import { motionKnots, type RepSpan } from "./motion-knots.ts";
import { poseFromKey } from "./pose-from-key.ts";

/** A whole motion of the demonstrated golfer; times in seconds from its start. */
export interface DemoMotion {
  readonly plan: DemoPlan;
  readonly duration: Seconds;
  readonly reps: readonly RepSpan[];
  /** Of all reps, by time. Empty with empty hands: nothing is swung then. */
  readonly checkpoints: readonly DemoCheckpoint[];
  /** The golfer at `t` seconds; before the start and after the end they stand still. */
  at(t: number): DemoPose;
  /** Which rep `t` belongs to, from 0; null between reps. */
  repAt(t: number): number | null;
}

/** The motion of a plan: pure, the same plan gives the same motion. @throws RangeError where a plan cannot be moved. */
export function demoMotion(plan: DemoPlan): DemoMotion {
  const { knots, reps } = motionKnots(plan);
  const path = keyPath(knots);
  return {
    plan,
    duration: seconds(path.duration),
    reps: plan.club ? reps : [],
    checkpoints: plan.club ? reps.flatMap((span, rep) => findCheckpoints(path, plan.golfer, span, rep)) : [],
    at: (t) => poseFromKey(path.at(t), plan.golfer, plan.club),
    repAt: (t) => {
      if (!plan.club) return null;
      const rep = reps.findIndex((span) => t >= span.start && t < span.end);
      return rep < 0 ? null : rep;
    },
  };
}
