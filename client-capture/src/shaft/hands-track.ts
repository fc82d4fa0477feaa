import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Hands } from "./hands.ts";
import { handsVariance, startHandsMotion, type HandsMotion } from "./hands-motion.ts";

/** A picture's time, and the shaft's line in it where it was found: all (x, y) with nx * x + ny * y = `place`, picture pixels. */
export interface HandsLine {
  t: number;
  found: boolean;
  nx: number;
  ny: number;
  place: number;
  /** How fast the shaft turned, radians a second. */
  turning: number;
}

/**
 * Where the hands are in the picture of now: from poses, each as old as it is, and from where the shaft's line passed in every picture since. Changed in place,
 * picture pixels.
 */
export interface HandsTrack {
  newest: (Hands & { readonly t: Milliseconds }) | null;
  /** How fast the hands went from the pose before to the newest, picture pixels a second. */
  poseSpeedX: number;
  poseSpeedY: number;
  /** As they were at the newest pose's time, and as they are now. */
  readonly atPose: HandsMotion;
  readonly moving: HandsMotion;
  /** The last pictures, as a ring: the newest is at (`count` - 1) % length. */
  readonly lines: HandsLine[];
  count: number;
  /** The answer for now. */
  readonly now: { x: number; y: number; torso: number; apart: number; seen: number; height: number };
}

/** Pictures remembered: the time of a late pose has to lie among them, at 240 a second too. */
const remembered = 64;

export const startHandsTrack = (): HandsTrack => ({
  newest: null,
  poseSpeedX: 0,
  poseSpeedY: 0,
  atPose: startHandsMotion(),
  moving: startHandsMotion(),
  lines: Array.from({ length: remembered }, () => ({
    t: -Infinity,
    found: false,
    nx: 1,
    ny: 0,
    place: 0,
    turning: 0,
  })),
  count: 0,
  now: { x: 0, y: 0, torso: 0, apart: 0, seen: 0, height: 0 },
});

/** The line of `back` pictures ago, 1 the newest; null where there were not so many. */
export const lineBefore = ({ lines, count }: HandsTrack, back: number): HandsLine | null =>
  back > count || back > lines.length ? null : (lines[(count - back) % lines.length] ?? null);

/** Picture pixels; 1 where no pose has been seen. */
export const torsoOf = ({ newest }: HandsTrack): number => newest?.torso ?? 1;

/** How fast the hands go, torso lengths a second. */
export const handsSpeed = (track: HandsTrack): number =>
  Math.hypot(track.moving.state[2] as number, track.moving.state[3] as number) / torsoOf(track);

/** How fast they go up in the picture, torso lengths a second. */
export const handsRise = (track: HandsTrack): number => -(track.moving.state[3] as number) / torsoOf(track);

/** Standard deviation of the hands' place along the normal of `angle`, torso lengths. */
export function handsSdAcross(track: HandsTrack, angle: number): number {
  const variance = handsVariance(track.moving, -Math.sin(angle), Math.cos(angle));
  return Math.sqrt(Math.max(1e-4, variance / torsoOf(track) ** 2));
}

/** The same, as the mean over all directions. */
export const handsSd = (track: HandsTrack): number =>
  Math.sqrt((handsVariance(track.moving, 1, 0) + handsVariance(track.moving, 0, 1)) / 2) / torsoOf(track);
