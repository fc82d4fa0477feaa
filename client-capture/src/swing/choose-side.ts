import { swingTuning } from "./swing-tuning.ts";

/** The side of the ball that the club is on: behind it, or past it towards the target. */
export type Side = "back" | "through";

export interface SideQuestion {
  readonly before: Side | null;
  /** Radians from hanging, a moment ago and now. */
  readonly turnedBefore: number;
  readonly turned: number;
  readonly seconds: number;
  /** The swing angle that an even turn would have brought by now, radians, back positive; null where the club does not turn fast enough to be bound to it. */
  readonly expected: number | null;
  /** Metres by which the hands are nearer to the target than when the club hung. */
  readonly handsPast: number;
  /** How far the head points to the target, -1 to 1; 0 where that is not known. */
  readonly lean: number;
}

/**
 * A club changes sides only by hanging low in between. Which side it rises on is told by hands that are plainly aside, else by a turn too fast to bounce off the
 * low, else by the hands, and while it is still low by its lean where that is known; between pictures so far apart that the low may have been missed, only
 * by hands that are plainly on the other side.
 */
export function chooseSide({ before, turnedBefore, turned, seconds, expected, handsPast, lean }: SideQuestion): Side {
  const { handsAside, handsPlainlyAside, changesBelow, settlesBelow, missedLow } = swingTuning.side;
  const handsBeyond = (metres: number): Side | null =>
    Math.abs(handsPast) < metres ? null : handsPast < 0 ? "back" : "through";
  const byLean: Side | null = Math.abs(lean) < 0.2 ? null : lean < 0 ? "back" : "through";
  const plainly = handsBeyond(handsPlainlyAside);
  if (before === null || Math.min(turned, turnedBefore) < changesBelow) {
    const byTurn: Side | null = expected === null ? null : expected > 0 ? "back" : "through";
    const whileLow = turned < changesBelow ? byLean : null;
    return plainly ?? byTurn ?? handsBeyond(handsAside) ?? whileLow ?? before ?? byLean ?? "back";
  }
  return turned < settlesBelow || seconds > missedLow ? (plainly ?? before) : before;
}
