import type { Calibration } from "@overcue/shared-geometry/camera";
import type { Handed } from "@overcue/shared-geometry/station";
import { notCountedReasons, type CheckpointReading, type NoRep, type Rep } from "@overcue/shared-geometry/wire/rep";
import type { ReadCheckpoint, RepReading } from "../pipeline/rep-readings.ts";
import type { Refusal } from "../swing/segment-reps.ts";

/** Milliseconds of a source's clock as the relay's. */
export type ToRelayTime = (t: number) => number;

export function wireCheckpoint({ checkpoint, t, sdMs, readOuts }: ReadCheckpoint, at: ToRelayTime): CheckpointReading {
  return { checkpoint, at: at(t), sdMs, readOuts };
}

/** A movement that was no rep; why is told only where it is known and whoever made it expects one. */
export function wireNoRep(refusal: Refusal | null, repId: string): NoRep {
  const told = notCountedReasons.find((reason) => reason === refusal?.why) ?? null;
  return { repId, why: refusal?.swungUp === true ? told : null };
}

/** A finished rep as the practice book takes it. */
export function wireRep(rep: RepReading, id: string, handed: Handed, calibration: Calibration, at: ToRelayTime): Rep {
  return {
    id,
    kind: rep.kind,
    startedAt: at(rep.startedAt),
    endedAt: at(rep.endedAt),
    handed,
    calibration,
    checkpoints: rep.checkpoints.map((checkpoint) => wireCheckpoint(checkpoint, at)),
    complete: rep.complete,
    missing: [...rep.missing],
    tempo: rep.tempo === null ? null : { ...rep.tempo },
    trackedShare: rep.trackedShare,
    trajectory: rep.trajectory.map(([t, ...rest]) => [at(t), ...rest]),
  };
}
