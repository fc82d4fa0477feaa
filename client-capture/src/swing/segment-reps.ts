import type { FollowedSample } from "./follow-swing.ts";
import { handsHeights, haveRisen, higherHands, lowerHands, type HandsHeights } from "./hands-heights.ts";
import { areHandsHigh, isHigh } from "./lead-hand.ts";
import { swingTuning } from "./swing-tuning.ts";
import { timeThroughBall } from "./time-through-ball.ts";

/** Why a movement of the club was not taken for a rep. A closed list, for the screens and the tests. */
export type NotARep =
  | "too-short"
  | "hands-stayed"
  | "hands-sank"
  | "hands-high"
  | "not-behind"
  | "walked"
  | "club-lost"
  | "too-long"
  | "no-impact";

/** Why a movement was no rep, and whether the club was swung up in it: then whoever made it expects a rep. */
export interface Refusal {
  readonly why: NotARep;
  readonly swungUp: boolean;
}

/** The part of a movement that the club is in. */
export type SwingPhase = "still" | "back" | "top" | "down" | "through" | "hold" | "unknown";

interface Extreme {
  readonly t: number;
  readonly angle: number;
  readonly sd: number;
}

/** A movement that may become a rep. Times in milliseconds. */
export interface Movement {
  readonly stage: "back" | "down" | "through";
  readonly leftLowAt: number;
  /** The extremes of the swing angle so far: each top, and the turn between two tops of a pump. */
  readonly tops: readonly Extreme[];
  readonly turns: readonly Extreme[];
  readonly running: Extreme;
  /** Highest hands going back, lowest coming down, since the club last turned: where the club has them. */
  readonly hands: HandsHeights;
  readonly passedLowAt: number | null;
  /** How long the club has been on its way down from the last top, holds left out. */
  readonly wayDown: number;
  /** How long it had stood still before it passed the low. */
  readonly stood: number;
}

/** On its way from the low to its first top: what it passes again in a pump is no checkpoint of the way back. */
export const goesBack = ({ stage, tops }: Movement): boolean => stage === "back" && tops.length === 0;

export interface Segmenting {
  /** The last moment at which the club hung low, with no movement since; minus infinity where there is none. */
  readonly lastLowAt: number;
  /** When the club was last seen past the ball; minus infinity where it is not known to have been, or went on up from there. */
  readonly lastAheadAt: number;
  /** Least swing angle since the club last came down: how far forward of the ball it went. */
  readonly forward: Extreme | null;
  readonly movement: Movement | null;
  readonly lastSeenAt: number;
  /** When it was last out of sight with the hands up at the shoulders, as held at the top; minus infinity where it has not been. */
  readonly lastHighAt: number;
  /** How long the club has stood still since it was last low or past the ball, milliseconds. */
  readonly stood: number;
  /** When the last movement that came down through the low was over. */
  readonly overAt: number;
}

export const startSegmenting: Segmenting = {
  lastLowAt: -Infinity,
  lastAheadAt: -Infinity,
  forward: null,
  movement: null,
  lastSeenAt: -Infinity,
  lastHighAt: -Infinity,
  stood: 0,
  overAt: -Infinity,
};

/** A movement that went back, turned, and came down past the low. */
export interface Segment {
  readonly leftLowAt: number;
  readonly tops: readonly Extreme[];
  readonly turns: readonly Extreme[];
  readonly passedLowAt: number;
  /** From the last top to there, holds left out. */
  readonly wayDown: number;
  /** How long the club had stood still by then, since it was low. */
  readonly stood: number;
  readonly endedAt: number;
  readonly forwardBefore: Extreme | null;
  /** When the movement before it was over: what stood still earlier stood still for that one. */
  readonly after: number;
}

type Verdict = { readonly segment: Segment } | { readonly refused: Refusal } | null;

/**
 * Follows the swing angle back, to its top, down and through; pumps add tops. One sample at a time; the verdict comes when the
 * movement is over. Times are the samples' own. `still`: whether the club stands still there.
 */
export function segmentReps(
  state: Segmenting,
  sample: FollowedSample,
  still: boolean,
): { readonly state: Segmenting; readonly verdict: Verdict } {
  if (sample.angle === null) return loseClub(state, sample);
  if (cameDownUnseen(state, sample.t, sample.angle)) return startOver({ ...state, lastSeenAt: sample.t }, "club-lost");
  const stood = sample.angle < 0 ? 0 : still ? state.stood + sinceKnown(state, sample) : state.stood;
  const seen = { ...state, lastSeenAt: sample.t, lastAheadAt: lastAhead(state, sample), stood };
  const here: Extreme = { t: sample.t, angle: sample.angle, sd: sample.angleSd };
  return seen.movement === null ? watchLow(seen, sample, here) : follow(seen, seen.movement, sample, here);
}

/** A movement that is none: where the club was before it is forgotten. */
const startOver = (
  { movement, lastSeenAt, overAt }: Segmenting,
  why: NotARep,
): { state: Segmenting; verdict: Verdict } => ({
  state: { ...startSegmenting, lastSeenAt, overAt },
  verdict: { refused: refusalOf(why, movement === null ? [] : [...movement.tops, movement.running]) },
});

/** Of a movement that went to these extremes. */
export const refusalOf = (why: NotARep, extremes: readonly Pick<Extreme, "angle">[]): Refusal => ({
  why,
  swungUp: extremes.some(({ angle }) => angle >= swingTuning.swungUp),
});

/** With the hands about the shoulders the club of a finish may as well be one of a top. */
function lastAhead({ lastAheadAt }: Segmenting, sample: FollowedSample): number {
  const { t, angle } = sample;
  if (angle === null || angle >= 0) return lastAheadAt;
  return angle < -Math.PI || holdsHigh(sample) ? -Infinity : t;
}

function loseClub(state: Segmenting, sample: FollowedSample): { state: Segmenting; verdict: Verdict } {
  const { movement } = state;
  if (movement === null) return { state, verdict: null };
  const { passedLowAt } = movement;
  const isLost = sinceKnown(state, sample) > swingTuning.longestGap;
  if (passedLowAt !== null && (isLost || sample.t - passedLowAt > timeToComeThrough(movement)))
    return finish(state, movement, passedLowAt, state.lastSeenAt);
  if (isLost) return startOver(state, "club-lost");
  if (passedLowAt !== null || !areHandsUp(sample)) return { state, verdict: null };
  if (sample.t - movement.leftLowAt > swingTuning.longestHeldRep) return startOver(state, "too-long");
  const stood = state.stood + sinceKnown(state, sample);
  return { state: { ...state, stood, lastHighAt: sample.t }, verdict: null };
}

function watchLow(state: Segmenting, sample: FollowedSample, here: Extreme): { state: Segmenting; verdict: Verdict } {
  const isLow = Math.abs(here.angle) < swingTuning.lowClub && !holdsHigh(sample);
  if (isLow) {
    const forward = state.forward === null || here.angle < state.forward.angle ? here : state.forward;
    const stale = sample.t - forward.t > 2500;
    return { state: { ...state, lastLowAt: sample.t, stood: 0, forward: stale ? here : forward }, verdict: null };
  }
  if (here.angle < 0) {
    const forward = state.forward === null || here.angle < state.forward.angle ? here : state.forward;
    return { state: { ...state, forward }, verdict: null };
  }
  if (here.angle < swingTuning.leavesLow) return { state, verdict: null };
  // A club that was past the ball and is behind it now hung low in between, seen or not.
  const leftLowAt = Math.max(state.lastLowAt, state.lastAheadAt);
  if (sample.t - leftLowAt - state.stood > swingTuning.longestBack) return { state, verdict: null };
  const movement: Movement = {
    stage: "back",
    leftLowAt,
    tops: [],
    turns: [],
    running: here,
    hands: handsHeights(sample),
    passedLowAt: null,
    wayDown: 0,
    stood: 0,
  };
  return { state: { ...state, movement }, verdict: null };
}

function follow(
  state: Segmenting,
  movement: Movement,
  sample: FollowedSample,
  here: Extreme,
): { state: Segmenting; verdict: Verdict } {
  const { running } = movement;
  const keep = (next: Movement): { state: Segmenting; verdict: Verdict } => ({
    state: { ...state, movement: next },
    verdict: null,
  });
  const took = sample.t - movement.leftLowAt;
  const tooLong = took - state.stood > swingTuning.longestRep || took > swingTuning.longestHeldRep;
  if (movement.stage !== "through" && tooLong) return startOver(state, "too-long");
  if (movement.stage === "back") {
    const hands = handsHeights(sample);
    const highest = higherHands(movement.hands, hands);
    if (here.angle >= running.angle) return keep({ ...movement, running: here, hands: highest });
    const turns =
      here.angle <= running.angle - reversalAt(running, here) && haveRisen(hands, highest, swingTuning.handsFall);
    if (!turns) return keep({ ...movement, hands: highest });
    const wayDown = timeToFall(running, here);
    const down = { ...movement, stage: "down" as const, running: here, hands, wayDown };
    const lastTurn = movement.turns.at(-1);
    const jumped = lastTurn !== undefined && running.t - lastTurn.t < swingTuning.leastBetweenTurns;
    return keep(
      jumped ? { ...down, turns: movement.turns.slice(0, -1) } : { ...down, tops: [...movement.tops, running] },
    );
  }
  if (movement.stage === "down") {
    const wayDown = movement.wayDown + timeToFall(running, here);
    if (here.angle < swingTuning.passesLow && !isSupposed(sample)) {
      // No rep, and nothing to wait for: what follows may be the rep's own way back.
      if (peakOf(movement.tops) < swingTuning.leastPeak)
        return { state: { ...state, movement: null }, verdict: { refused: refusalOf("too-short", movement.tops) } };
      return keep({ ...movement, stage: "through", running: here, passedLowAt: here.t, wayDown, stood: state.stood });
    }
    const hands = handsHeights(sample);
    const lowest = lowerHands(movement.hands, hands);
    if (here.angle <= running.angle) return keep({ ...movement, running: here, hands: lowest, wayDown });
    const turns =
      here.angle >= running.angle + reversalAt(running, here) && haveRisen(lowest, hands, swingTuning.handsRise);
    if (!turns) return keep({ ...movement, hands: lowest });
    const back = { ...movement, stage: "back" as const, running: here, hands };
    const lastTop = movement.tops.at(-1);
    const jumped = lastTop !== undefined && running.t - lastTop.t < swingTuning.leastBetweenTurns;
    return keep(
      jumped ? { ...back, tops: movement.tops.slice(0, -1) } : { ...back, turns: [...movement.turns, running] },
    );
  }
  const passedLowAt = movement.passedLowAt ?? here.t;
  const further = here.angle <= running.angle;
  // A rep is not over before the club had the time to pass the ball and come up again, which takes a slow one longer.
  const least = timeThroughBall(movement);
  const turned = here.angle > running.angle + swingTuning.throughReversal && sample.t - passedLowAt > least;
  const over = sample.t - passedLowAt > timeToComeThrough(movement);
  if (!turned && !over) return keep(further ? { ...movement, running: here } : movement);
  return finish(state, movement, passedLowAt, turned ? running.t : sample.t);
}

/** A club that was up and out of sight for long, and next is seen down, may have come down any way. */
const cameDownUnseen = ({ movement, lastSeenAt }: Segmenting, t: number, angle: number): boolean =>
  movement !== null &&
  movement.passedLowAt === null &&
  t - lastSeenAt > swingTuning.longestGap &&
  angle < swingTuning.leastPeak;

/** How long the club has been out of sight, unless for being held up, milliseconds. */
const sinceKnown = ({ lastSeenAt, lastHighAt }: Segmenting, { t }: FollowedSample): number =>
  t - Math.max(lastSeenAt, lastHighAt);

/** Longest that a follow-through is waited for, milliseconds since the club passed the low. */
const timeToComeThrough = (movement: Movement): number =>
  Math.max(swingTuning.longestThrough, timeThroughBall(movement));

/** Time that a club coming down has taken from its lowest so far to a new one, milliseconds: none where it stood still for most of it, or was out of sight for long. */
function timeToFall(lowest: Extreme, here: Extreme): number {
  const took = here.t - lowest.t;
  const fell = lowest.angle - here.angle;
  return took <= swingTuning.longestGap && fell > (swingTuning.stillRate * took) / 1000 ? took : 0;
}

/** A club out of sight is supposed to go on as it went; it has not come down with the hands about the shoulders still. */
const isSupposed = (sample: FollowedSample): boolean => !sample.tracked && holdsHigh(sample);

/** Whether the hands are known to be about the shoulders or over them. */
const holdsHigh = ({ hanging, leadShoulderZ }: FollowedSample): boolean =>
  hanging !== null && leadShoulderZ !== null && areHandsHigh(hanging, leadShoulderZ);

/** Whether the pose model has the hands about the shoulders or over them. */
const areHandsUp = ({ hands, leadShoulderZ }: FollowedSample): boolean =>
  hands !== null && leadShoulderZ !== null && isHigh(hands.place.z - leadShoulderZ.value);

/** A turn that the angle's own error could feign is none. */
const reversalAt = (extreme: Extreme, here: Extreme): number =>
  Math.max(swingTuning.reversal, swingTuning.reversalSds * Math.hypot(extreme.sd, here.sd));

/**
 * The movement that the pictures end in at `endedAt`: its club has come through the low and was seen past the ball or had the time to pass it, but was not seen to come up again.
 * Null where there is none.
 */
export function segmentAtEnd(state: Segmenting, endedAt: number): Segment | null {
  const { movement } = state;
  const passedLowAt = movement?.passedLowAt ?? null;
  if (movement === null || passedLowAt === null) return null;
  const isPastBall = movement.running.angle < -swingTuning.lowClub;
  const hadTime = endedAt - passedLowAt >= timeThroughBall(movement);
  return isPastBall || hadTime ? segmentOf(state, movement, passedLowAt, endedAt) : null;
}

const segmentOf = (state: Segmenting, movement: Movement, passedLowAt: number, endedAt: number): Segment => ({
  leftLowAt: movement.leftLowAt,
  tops: movement.tops,
  turns: movement.turns,
  passedLowAt,
  wayDown: movement.wayDown,
  stood: movement.stood,
  endedAt,
  forwardBefore: state.forward,
  after: state.overAt,
});

function finish(
  state: Segmenting,
  movement: Movement,
  passedLowAt: number,
  endedAt: number,
): { state: Segmenting; verdict: Verdict } {
  const after: Segmenting = {
    ...state,
    movement: null,
    lastLowAt: -Infinity,
    lastAheadAt: state.lastAheadAt > passedLowAt ? state.lastAheadAt : -Infinity,
    forward: { ...movement.running },
    stood: 0,
    overAt: endedAt,
  };
  return { state: after, verdict: { segment: segmentOf(state, movement, passedLowAt, endedAt) } };
}

const peakOf = (tops: readonly Extreme[]): number => Math.max(...tops.map(({ angle }) => angle));
