import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import { readHands, type Hands } from "./hands.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * Where the hands are in the picture of now, from a pose that is perhaps older, and from where the shaft's line was found to pass.
 * Changed in place. `offX`, `offY` is the shaft's correction of the pose, picture pixels; the covariance is in square torso lengths.
 */
export interface HandsTrack {
  newest: (Hands & { readonly t: Milliseconds }) | null;
  speedX: number;
  speedY: number;
  offX: number;
  offY: number;
  xx: number;
  xy: number;
  yy: number;
  t: Milliseconds | null;
  /** The answer for now. */
  readonly now: { x: number; y: number; torso: number; apart: number; seen: number; height: number };
}

export const startHandsTrack = (): HandsTrack => ({
  newest: null,
  speedX: 0,
  speedY: 0,
  offX: 0,
  offY: 0,
  xx: 1,
  xy: 0,
  yy: 1,
  t: null,
  now: { x: 0, y: 0, torso: 0, apart: 0, seen: 0, height: 0 },
});

/** Moves the track to `t` with the newest pose. False while no pose has been seen. */
export function predictHands(track: HandsTrack, t: Milliseconds, body: Body | null, tuning: ShaftTuning): boolean {
  if (body !== null && body.t !== track.newest?.t) takePose(track, body);
  const { newest, now } = track;
  if (newest === null) return false;
  const ahead = Math.max(0, Math.min(t - newest.t, tuning.longestAhead)) / 1000;
  const way = (Math.hypot(track.speedX, track.speedY) * ahead) / newest.torso;
  const elapsed = track.t === null ? 1 : Math.max(0, t - track.t) / 1000;
  const keep = Math.exp(-elapsed / tuning.handsMemory);
  const sd = Math.hypot(tuning.offsetSd, (tuning.apartSd * newest.apart) / newest.torso, tuning.aheadSd * way);
  const fresh = sd * sd * (1 - keep * keep);
  track.offX *= keep;
  track.offY *= keep;
  track.xx = track.xx * keep * keep + fresh;
  track.xy *= keep * keep;
  track.yy = track.yy * keep * keep + fresh;
  track.t = t;
  now.x = newest.x + tuning.aheadShare * track.speedX * ahead + track.offX;
  now.y = newest.y + tuning.aheadShare * track.speedY * ahead + track.offY;
  now.torso = newest.torso;
  now.apart = newest.apart;
  now.seen = newest.seen;
  now.height = newest.height;
  return true;
}

function takePose(track: HandsTrack, body: Body): void {
  const hands = readHands(body);
  if (hands === null) return;
  const { newest } = track;
  const elapsed = newest === null ? 0 : (body.t - newest.t) / 1000;
  if (newest !== null && elapsed > 0 && elapsed < 0.4) {
    track.speedX = (hands.x - newest.x) / elapsed;
    track.speedY = (hands.y - newest.y) / elapsed;
    // The body's size hardly changes from picture to picture, but its reading does.
    hands.torso = newest.torso + (1 - Math.exp(-elapsed / 0.5)) * (hands.torso - newest.torso);
  } else {
    track.speedX = 0;
    track.speedY = 0;
  }
  track.newest = { ...hands, t: body.t };
}

/** Standard deviation of the hands' place along the normal of `angle`, torso lengths. */
export function handsSdAcross(track: HandsTrack, angle: number): number {
  const nx = -Math.sin(angle);
  const ny = Math.cos(angle);
  return Math.sqrt(Math.max(1e-4, nx * nx * track.xx + 2 * nx * ny * track.xy + ny * ny * track.yy));
}

/**
 * The shaft's line was found `across` picture pixels from the predicted hands along the normal of `angle`, give or take `sd` torso lengths. The hands
 * never go farther than `farthest` torso lengths from where the pose has them, lest a wrong line lead them away bit by bit.
 */
export function correctHands(track: HandsTrack, angle: number, across: number, sd: number, farthest: number): void {
  const nx = -Math.sin(angle);
  const ny = Math.cos(angle);
  const { torso } = track.now;
  const px = track.xx * nx + track.xy * ny;
  const py = track.xy * nx + track.yy * ny;
  const gain = 1 / (nx * px + ny * py + sd * sd);
  const off = across / torso;
  const offX = track.offX + px * gain * off * torso;
  const offY = track.offY + py * gain * off * torso;
  const shorten = Math.min(1, (farthest * torso) / (Math.hypot(offX, offY) || 1));
  track.now.x += offX * shorten - track.offX;
  track.now.y += offY * shorten - track.offY;
  track.offX = offX * shorten;
  track.offY = offY * shorten;
  track.xx -= px * px * gain;
  track.xy -= px * py * gain;
  track.yy -= py * py * gain;
}
