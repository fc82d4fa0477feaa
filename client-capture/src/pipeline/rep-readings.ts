import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import { anglesOf } from "@overcue/shared-geometry/shaft-angles";
import type { DatedCheckpoint, FinishedRep } from "../swing/finish-rep.ts";
import { readBands, type ReadThrough } from "./read-bands.ts";

/** A checkpoint's instant (milliseconds, one standard deviation) and what was read there. */
export interface ReadCheckpoint {
  readonly checkpoint: CheckpointId;
  readonly t: number;
  readonly sdMs: number;
  readonly readOuts: ReadOuts;
}

/** A finished rep as numbers, times on the source's clock. */
export interface RepReading extends Pick<
  FinishedRep,
  "kind" | "startedAt" | "endedAt" | "tempo" | "complete" | "missing" | "trackedShare"
> {
  readonly checkpoints: readonly ReadCheckpoint[];
  /** Milliseconds, grip x y z (m), azimuth, elevation (rad); thinned. */
  readonly trajectory: readonly (readonly [number, number, number, number, number, number])[];
}

const longestTrajectory = 400;

export function readCheckpoint({ checkpoint, t, sd, shaft }: DatedCheckpoint, through: ReadThrough): ReadCheckpoint {
  return { checkpoint, t, sdMs: sd, readOuts: readBands(shaft, through, checkpoint) };
}

export function repReadings(rep: FinishedRep, through: ReadThrough): RepReading {
  const { kind, startedAt, endedAt, tempo, complete, missing, trackedShare } = rep;
  const path = rep.samples.flatMap(({ t, shaft }) => {
    if (shaft === null || t < startedAt - 200 || t > endedAt) return [];
    const { azimuth, elevation } = anglesOf(shaft.toHead);
    return [[t, shaft.grip.x, shaft.grip.y, shaft.grip.z, azimuth, elevation] as const];
  });
  const every = Math.max(1, Math.ceil(path.length / longestTrajectory));
  return {
    kind,
    startedAt,
    endedAt,
    tempo,
    complete,
    missing,
    trackedShare,
    checkpoints: rep.checkpoints.map((one) => readCheckpoint(one, through)),
    trajectory: path.filter((_, at) => at % every === 0),
  };
}
