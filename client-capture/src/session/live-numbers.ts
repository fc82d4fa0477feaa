import { makeRateMeter } from "../running/rate-meter.ts";

/** How often pictures and poses come, and the best rate so far, for one source. */
export interface LiveNumbers {
  pictureAt(now: number): void;
  poseAt(now: number): void;
  read(now: number): { readonly frames: number; readonly poses: number; readonly bestFrames: number };
}

/** A rate counts as the best only after this many pictures: the first second is uneven. */
const settled = 90;

export function makeLiveNumbers(): LiveNumbers {
  const pictures = makeRateMeter();
  const poses = makeRateMeter();
  let seen = 0;
  let best = 0;
  return {
    pictureAt(now) {
      pictures.tick(now);
      seen++;
    },
    poseAt(now) {
      poses.tick(now);
    },
    read(now) {
      const frames = pictures.perSecond(now);
      if (seen > settled) best = Math.max(best, frames);
      return { frames, poses: poses.perSecond(now), bestFrames: best };
    },
  };
}
