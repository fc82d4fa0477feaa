import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { ReadCheckpoint } from "@overcue/client-capture/pipeline/rep-readings";
import { groundOf, judgePlace, type JudgedPlace } from "./judge-session.ts";
import { readAt } from "./true-reps.ts";

/** One checkpoint that was told while it happened. */
export interface JudgedLive {
  /** Milliseconds after the club really passed it; null where it passed none of that name about then. */
  readonly late: number | null;
  readonly sdMs: number;
  /** Null where the truth is at no band; a band that is told where the club passed no such checkpoint is wrong. */
  readonly place: JudgedPlace | null;
}

/** So far from a checkpoint, milliseconds, one that is told is not of it. */
const farthest = 1000;

export const judgeLive = (motion: DemoMotion, told: readonly ReadCheckpoint[]): JudgedLive[] =>
  told.map((one) => {
    const passes = motion.checkpoints
      .filter(({ checkpoint, t }) => checkpoint === one.checkpoint && Math.abs(t - one.t) <= farthest)
      .sort((a, b) => Math.abs(a.t - one.t) - Math.abs(b.t - one.t));
    const truth = passes[0];
    if (truth === undefined) return { late: null, sdMs: one.sdMs, place: outOfPlace(one) };
    const place = judgePlace(one.checkpoint, readAt(motion, truth.t, one.checkpoint), one.readOuts);
    return { late: one.t - truth.t, sdMs: one.sdMs, place };
  });

function outOfPlace({ checkpoint, readOuts }: ReadCheckpoint): JudgedPlace | null {
  const subject = bandSubjectAt[checkpoint];
  if (subject === null) return null;
  return { subject, off: null, decided: groundOf(readOuts, subject)?.band.decided ?? false, right: false };
}
