import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds, type Metres, type Milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { cameThrough } from "./came-through.ts";
import { dateCheckpoints } from "./date-checkpoints.ts";
import type { FollowedSample } from "./follow-swing.ts";
import { datedByHold, type Hold } from "./holds.ts";
import { isFinish } from "./is-finish.ts";
import { kindOfRep, refuseRep, type RepKind } from "./judge-rep.ts";
import { repSamples } from "./rep-samples.ts";
import { refusalOf, type NotARep, type Refusal, type Segment } from "./segment-reps.ts";
import { shaftAt } from "./shaft-at.ts";
import { swingTuning } from "./swing-tuning.ts";
import { tempoBetween, type Tempo } from "./tempo-between.ts";

/** A checkpoint with the shaft as it was there; null where the shaft was not known at that instant. */
export interface DatedCheckpoint extends CheckpointTime {
  readonly shaft: ShaftInWorld | null;
}

export interface FinishedRep {
  readonly kind: RepKind;
  readonly startedAt: Milliseconds;
  readonly endedAt: Milliseconds;
  readonly checkpoints: readonly DatedCheckpoint[];
  readonly tempo: Tempo | null;
  readonly complete: boolean;
  readonly missing: readonly CheckpointId[];
  readonly trackedShare: number;
  readonly samples: readonly FollowedSample[];
}

/** What a half swing is not expected to show, and a rep out of a flow. */
const notExpected: Readonly<Record<RepKind, readonly CheckpointId[]>> = {
  full: [],
  rehearsal: [],
  pump: [],
  flow: ["address"],
  half: ["arm-level-back", "arm-level-down"],
};

/** Turns a movement into a rep with dated checkpoints and tempo, or says why it is none. */
export function finishRep(
  kept: readonly FollowedSample[],
  segment: Segment,
  gripToHead: Metres,
  holds: readonly Hold[],
): { readonly rep: FinishedRep } | { readonly refused: Refusal } {
  const refuse = (why: NotARep): { readonly refused: Refusal } => ({ refused: refusalOf(why, segment.tops) });
  const cut = repSamples(kept, segment);
  if (cut === null) return refuse("club-lost");
  const refused = refuseRep(cut, segment);
  if (refused !== null) return refuse(refused);
  const times = dateCheckpoints(cut, segment, gripToHead).map((time) => datedByHold(time, holds));
  const at = (checkpoint: CheckpointId): CheckpointTime | null =>
    times.find((time) => time.checkpoint === checkpoint) ?? null;
  const impact = at("impact");
  const top = at("top");
  const wentUp = at("shaft-level-back") !== null || (cut.address !== null && at("arm-level-back") !== null);
  const unseenAtBall = impact === null && wentUp && cameThrough(cut, segment);
  const struck = impact !== null && (top === null || impact.t > top.t);
  if (!struck && !unseenAtBall) return refuse("no-impact");
  if (struck && isFinish(cut, segment, times)) return refuse("hands-high");
  const pumped = segment.tops.length > 1 ? segment.tops[0] : undefined;
  const firstTop = top === null || pumped === undefined ? top : { t: pumped.t, sd: top.sd };
  const isStopped = segment.stood > swingTuning.mostStoodForTempo;
  const downswingSeconds = top === null || impact === null ? null : (impact.t - top.t) / 1000;
  const kind = kindOfRep(cut, segment, downswingSeconds);
  const missing = checkpointIds.filter((id) => at(id) === null && !notExpected[kind].includes(id));
  const swung = cut.samples.filter(
    (sample) => sample.t >= cut.setOffAt && sample.t <= (impact?.t ?? segment.passedLowAt),
  );
  return {
    rep: {
      kind,
      startedAt: milliseconds(cut.setOffAt),
      endedAt: milliseconds(segment.endedAt),
      checkpoints: times.map((time) => ({ ...time, shaft: shaftAt(cut.samples, time.t, time.sd) })),
      tempo:
        impact === null || isStopped
          ? null
          : tempoBetween({ t: cut.setOffAt, sd: cut.setOffSd }, firstTop, top, impact),
      complete: missing.length === 0,
      missing,
      trackedShare: swung.length === 0 ? 0 : swung.filter((sample) => sample.tracked).length / swung.length,
      samples: cut.samples,
    },
  };
}
