import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import { readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";

/** A checkpoint as it really was; `until` is later than `t` where the club was held there. Milliseconds. */
export interface TrueCheckpoint {
  readonly checkpoint: CheckpointId;
  readonly t: number;
  readonly until: number;
  readonly readOuts: ReadOuts;
}

export interface TrueRep {
  readonly rep: number;
  readonly kind: string;
  readonly from: number;
  readonly to: number;
  readonly checkpoints: readonly TrueCheckpoint[];
}

/** Passed more than once in a rep, these count the last time: what comes after the last top. */
const coming: ReadonlySet<CheckpointId> = new Set(["top", "arm-level-down", "shaft-level-down", "impact"]);

/** Every rep of a motion with its checkpoints and what an errorless measurement would read at each. */
export function trueReps(motion: DemoMotion): TrueRep[] {
  return motion.reps.map(({ plan, start, end, hold }, rep) => {
    const told = motion.checkpoints.filter((one) => one.rep === rep);
    return {
      rep,
      kind: plan.kind,
      from: start * 1000,
      to: end * 1000,
      checkpoints: checkpointIds.flatMap((checkpoint) => {
        const times = told.filter((one) => one.checkpoint === checkpoint).map(({ t }) => t);
        const t = coming.has(checkpoint) ? times.at(-1) : times[0];
        const held = hold?.at === checkpoint ? hold : null;
        return t === undefined
          ? []
          : [{ checkpoint, t, until: held === null ? t : held.until * 1000, readOuts: readAt(motion, t, checkpoint) }];
      }),
    };
  });
}

const exact: readonly number[] = Array.from({ length: 25 }, () => 0);

/** What an errorless measurement would read at a moment, milliseconds. */
export function readAt(motion: DemoMotion, t: number, checkpoint: CheckpointId): ReadOuts {
  const { club } = motion.at(t / 1000);
  if (club === null) throw new Error("a rep without a club has no checkpoints");
  const shaft = { t: milliseconds(t), grip: club.grip, toHead: club.toHead, covariance: exact };
  return readOutsOf(shaft, motion.plan.golfer.station, checkpoint);
}
