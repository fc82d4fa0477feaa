import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { quantile } from "../quantile.ts";
import { isSlow } from "../../scenes/session/practice-session.ts";
import type { JudgedCheckpoint, JudgedPlace, JudgedSession } from "./judge-session.ts";

/** The checkpoints whose instants are judged: address is only the last moment of stillness, and nothing is read by its instant. */
export const datedIds: readonly CheckpointId[] = checkpointIds.filter((id) => id !== "address");

/** Half a picture's time at 60 a second, milliseconds. */
const halfFrame = 1000 / 120;

/** Milliseconds within which a checkpoint's instant is asked for: half a picture's time at 60 a second when slow, else one picture's time. */
const asked = ({ speed, framesPerSecond }: JudgedCheckpoint): number =>
  isSlow(speed) ? halfFrame : 1000 / framesPerSecond;

/** In percent; a share of nothing is not a number. */
const percent = (part: number, whole: number): number => (100 * part) / whole;

export interface RepFigures {
  readonly reps: number;
  readonly recall: number;
  readonly precision: number;
}

export function repFigures(sessions: readonly JudgedSession[]): RepFigures {
  const sum = (pick: (session: JudgedSession) => number): number =>
    sessions.reduce((total, session) => total + pick(session), 0);
  const [reps, found, invented] = [sum(({ reps }) => reps), sum(({ found }) => found), sum(({ invented }) => invented)];
  return { reps, recall: percent(found, reps), precision: percent(found, found + invented) };
}

export interface TimeFigures {
  readonly count: number;
  /** Milliseconds. */
  readonly bias: number;
  readonly p50: number;
  readonly p95: number;
  /** Percent within what was asked for, and within the stated 95 % interval. */
  readonly within: number;
  readonly covered: number;
}

export function timeFigures(checkpoints: readonly JudgedCheckpoint[]): TimeFigures {
  const misses = checkpoints.map(({ late }) => Math.abs(late));
  const within = checkpoints.filter((one) => Math.abs(one.late) <= asked(one));
  const covered = checkpoints.filter(({ late, sdMs }) => Math.abs(late) <= 1.96 * sdMs);
  return {
    count: checkpoints.length,
    bias: quantile(
      checkpoints.map(({ late }) => late),
      0.5,
    ),
    p50: quantile(misses, 0.5),
    p95: quantile(misses, 0.95),
    within: percent(within.length, checkpoints.length),
    covered: percent(covered.length, checkpoints.length),
  };
}

export interface PlaceFigures {
  readonly count: number;
  /** Centimetres across the ball line. */
  readonly p50: number;
  readonly p95: number;
  readonly covered: number;
  /** Percent: of all that could be told a place or a band; of the decided; of all. */
  readonly told: number;
  readonly decided: number;
  readonly right: number;
  readonly wrong: number;
}

export function placeFigures(checkpoints: readonly Pick<JudgedCheckpoint, "place">[]): PlaceFigures {
  const places = checkpoints.flatMap(({ place }): JudgedPlace[] => (place === null ? [] : [place]));
  const off = places.flatMap((place) => (place.off === null ? [] : [place.off]));
  const centimetres = off.map(({ y }) => 100 * Math.abs(y));
  const decided = places.filter((place) => place.decided);
  const right = decided.filter((place) => place.right).length;
  return {
    count: places.length,
    p50: quantile(centimetres, 0.5),
    p95: quantile(centimetres, 0.95),
    covered: percent(off.filter(({ y, sdY }) => Math.abs(y) <= 1.96 * sdY).length, off.length),
    told: percent(off.length, places.length),
    decided: percent(decided.length, places.length),
    right: percent(right, decided.length),
    wrong: percent(decided.length - right, places.length),
  };
}

/**
 * Share of events within the tolerance of the GolfDB benchmark, max(round((impact - address) / 30), 1) pictures (McNally et al. 2019, arXiv 1903.06528; its
 * evaluation code). Five of its middle six events are checkpoints here; the sixth, mid-follow-through, is none, and counts as missed in `ofSix`.
 */
export function golfDbShare(sessions: readonly JudgedSession[]): { readonly ofFive: number; readonly ofSix: number } {
  const events: ReadonlySet<CheckpointId> = new Set([
    "shaft-level-back",
    "arm-level-back",
    "top",
    "arm-level-down",
    "impact",
  ]);
  let asked = 0;
  let within = 0;
  for (const session of sessions) {
    for (const { checkpoint, late, swingMs, framesPerSecond } of session.checkpoints) {
      if (!events.has(checkpoint) || swingMs === null) continue;
      asked++;
      const frame = 1000 / framesPerSecond;
      if (Math.abs(late) / frame <= Math.max(Math.round(swingMs / frame / 30), 1)) within++;
    }
    asked += session.leftOut.filter(({ checkpoint }) => events.has(checkpoint)).length;
    asked += events.size * session.missed.length;
  }
  return { ofFive: percent(within, asked), ofSix: percent(within, asked * 1.2) };
}
