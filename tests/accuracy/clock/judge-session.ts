import { bandSubjectAt, type BandSubject, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import type { GroundReading, ReadOuts } from "@overcue/shared-geometry/read-outs";
import type { ReadCheckpoint, RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import type { SessionSpeed } from "../../scenes/session/practice-session.ts";
import { matchReps } from "./match-reps.ts";
import type { TrueCheckpoint, TrueRep } from "./true-reps.ts";

/** One checkpoint of one matched rep. Milliseconds and metres, reported less true. */
export interface JudgedCheckpoint {
  readonly speed: SessionSpeed;
  readonly framesPerSecond: number;
  readonly kind: string;
  readonly checkpoint: CheckpointId;
  /** 0 where the club was held there and the instant lies within the hold. */
  readonly late: number;
  readonly sdMs: number;
  /** The setting off to the impact, milliseconds; null where the rep has no address of its own. */
  readonly swingMs: number | null;
  readonly place: JudgedPlace | null;
}

export interface JudgedPlace {
  readonly subject: BandSubject;
  /** Null where the place was not told (the reading says why). */
  readonly off: { readonly y: number; readonly sdY: number } | null;
  readonly decided: boolean;
  readonly right: boolean;
}

export interface JudgedSession {
  readonly reps: number;
  readonly found: number;
  readonly invented: number;
  /** True checkpoints of found reps that the report leaves out. */
  readonly leftOut: readonly {
    readonly speed: SessionSpeed;
    readonly kind: string;
    readonly checkpoint: CheckpointId;
  }[];
  readonly checkpoints: readonly JudgedCheckpoint[];
  readonly kinds: readonly { readonly truth: string; readonly told: string }[];
  readonly missed: readonly { readonly speed: SessionSpeed; readonly kind: string }[];
}

/** What was reported of a session against what happened in it. */
export function judgeSession(
  truths: readonly TrueRep[],
  readings: readonly RepReading[],
  how: { readonly speed: SessionSpeed; readonly framesPerSecond: number },
): JudgedSession {
  const { pairs, missed, invented } = matchReps(truths, readings);
  const leftOut: JudgedSession["leftOut"][number][] = [];
  const checkpoints: JudgedCheckpoint[] = [];
  for (const { truth, reading } of pairs) {
    const at = (id: CheckpointId): number | null =>
      truth.checkpoints.find(({ checkpoint }) => checkpoint === id)?.t ?? null;
    const [address, impact] = [at("address"), at("impact")];
    const swingMs = address === null || impact === null ? null : impact - address;
    for (const one of truth.checkpoints) {
      const told = reading.checkpoints.find(({ checkpoint }) => checkpoint === one.checkpoint);
      if (told === undefined) leftOut.push({ speed: how.speed, kind: truth.kind, checkpoint: one.checkpoint });
      else checkpoints.push({ ...how, kind: truth.kind, swingMs, ...judgeCheckpoint(one, told) });
    }
  }
  return {
    reps: truths.length,
    found: pairs.length,
    invented: invented.length,
    leftOut,
    checkpoints,
    kinds: pairs.map(({ truth, reading }) => ({ truth: truth.kind, told: reading.kind })),
    missed: missed.map(({ kind }) => ({ speed: how.speed, kind })),
  };
}

function judgeCheckpoint(
  truth: TrueCheckpoint,
  told: ReadCheckpoint,
): Pick<JudgedCheckpoint, "checkpoint" | "late" | "sdMs" | "place"> {
  const late = told.t < truth.t ? told.t - truth.t : Math.max(0, told.t - truth.until);
  return {
    checkpoint: truth.checkpoint,
    late,
    sdMs: told.sdMs,
    place: judgePlace(truth.checkpoint, truth.readOuts, told.readOuts),
  };
}

export function judgePlace(checkpoint: CheckpointId, truth: ReadOuts, told: ReadOuts): JudgedPlace | null {
  const subject = bandSubjectAt[checkpoint];
  if (subject === null) return null;
  const really = groundOf(truth, subject);
  const read = groundOf(told, subject);
  if (really === null || !really.band.decided) return null;
  if (read === null) return { subject, off: null, decided: false, right: false };
  return {
    subject,
    off: { y: read.y - really.y, sdY: read.sdY },
    decided: read.band.decided,
    right: read.band.decided && read.band.band === really.band.band,
  };
}

export function groundOf(readOuts: ReadOuts, subject: BandSubject): GroundReading | null {
  const read = placeReadOf(readOuts, subject);
  return read.defined ? read : null;
}
