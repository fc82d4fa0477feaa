import { makeRateMeter } from "../running/rate-meter.ts";

/** How often pictures and poses come, the best rate so far, and how many pictures were looked at and missed, for one source. */
export interface LiveNumbers {
  /** `missed`: how many the source has given by then that nobody had time for. */
  pictureAt(now: number, missed: number): void;
  poseAt(now: number): void;
  read(now: number): LiveReading;
}

export interface LiveReading {
  readonly frames: number;
  readonly poses: number;
  readonly bestFrames: number;
  readonly looked: number;
  readonly missed: number;
  /** Share of the pictures of the last few seconds that was missed, 0 to 1. */
  readonly missedShare: number;
}

/** A rate counts as the best only after this many pictures: the first second is uneven. */
const settled = 90;
/** Milliseconds. */
const recently = 5000;

export function makeLiveNumbers(): LiveNumbers {
  const pictures = makeRateMeter();
  const poses = makeRateMeter();
  let seen = 0;
  let best = 0;
  let missedByNow = 0;
  let recent: { readonly at: number; readonly seen: number; readonly missed: number }[] = [];
  return {
    pictureAt(now, missed) {
      pictures.tick(now);
      seen++;
      missedByNow = missed;
    },
    poseAt(now) {
      poses.tick(now);
    },
    read(now) {
      const frames = pictures.perSecond(now);
      if (seen > settled) best = Math.max(best, frames);
      recent = [...recent.filter(({ at }) => at > now - recently), { at: now, seen, missed: missedByNow }];
      const missed = missedByNow - (recent[0]?.missed ?? 0);
      const looked = seen - (recent[0]?.seen ?? 0);
      return {
        frames,
        poses: poses.perSecond(now),
        bestFrames: best,
        looked: seen,
        missed: missedByNow,
        missedShare: missed / Math.max(1, missed + looked),
      };
    },
  };
}
