import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Picture } from "../picture/picture.ts";
import { borrowFromRod } from "./borrow-from-rod.ts";
import type { RodColour } from "./rod-likeness.ts";
import { cutLineWindow, halfWindow, makeLineWindow, type LineWindow } from "./line-window.ts";
import { doubtHands } from "./doubt-hands.ts";
import { emptyFanChange, feedChange, type FanChange } from "./fan-change.ts";
import { goThrough } from "./go-through.ts";
import { noStandingLines, type StandingLines } from "./standing-lines.ts";
import { handsGone, noveltyOf } from "./novelty-of.ts";
import { oddsCarried } from "./odds-carried.ts";
import { makeLineSweep, type LineSweep } from "./line-sweep-state.ts";
import { sideByColour } from "./side-by-colour.ts";
import { sweepLines } from "./line-sweep.ts";
import { makeBodyMarks, markBody, type BodyMarks } from "./mark-body.ts";
import { startHandsTrack, type HandsTrack } from "./hands-track.ts";
import { makeHandsStay, stayedShare, type HandsStay } from "./hands-stay.ts";
import { predictHands } from "./predict-hands.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import type { SlowBackground } from "./background-state.ts";
import { emptyBackground, feedBackground, matchBackground } from "./slow-background.ts";
import { noRestedShaft, type RestedShaft } from "./uncover-background.ts";
import { isWalking, makeBodyPlaces, placeBody, type BodyPlaces } from "./walking.ts";
import { emptyWorkPicture, shrinkPicture, type WorkPicture } from "./work-picture.ts";

/** The eyes of the tracker: everything needed to search one picture. Changed in place; allocated once for a picture size. */
export interface ShaftSight {
  readonly tuning: ShaftTuning;
  readonly workingTorso: number;
  readonly rod: RodColour | null;
  /** Whether a rod lies along the shaft and out of the butt. */
  readonly rodAlong: boolean;
  readonly window: LineWindow;
  readonly sweep: LineSweep;
  readonly work: WorkPicture;
  readonly background: SlowBackground;
  readonly hands: HandsTrack;
  readonly marks: BodyMarks;
  readonly stay: HandsStay;
  readonly places: BodyPlaces;
  /** What has come into the picture, for fans; null where there is no time to look for any. */
  readonly change: FanChange | null;
  readonly standing: StandingLines;
  readonly rested: RestedShaft;
  t: Milliseconds | null;
  /** How far the hands are where they were, 0 to 1. */
  still: number;
  /** For each direction how far what was seen there is more than another look at the same still thing, 0 to 1. */
  readonly novelty: Float32Array;
  /** When each direction of the half turn was last looked at, milliseconds. */
  readonly looked: Float64Array;
  /** Evidence of each direction as it was last looked at; NaN where nobody ever did. */
  readonly lastSeen: Float32Array;
}

/** `leisure`: where there is time, it looks finer. */
export function openSight(tuning: ShaftTuning, leisure: boolean, rod: RodColour | null, rodAlong: boolean): ShaftSight {
  const workingTorso = leisure ? tuning.workingTorsoAtLeisure : tuning.workingTorso;
  const half = halfWindow(workingTorso * tuning.reach * 1.05);
  const sweep = makeLineSweep(half, tuning, leisure ? Infinity : tuning.mostLines);
  return {
    tuning,
    workingTorso,
    rod,
    rodAlong,
    window: makeLineWindow(half),
    sweep,
    work: emptyWorkPicture(),
    background: emptyBackground(),
    hands: startHandsTrack(),
    marks: makeBodyMarks(2 * half + 1),
    stay: makeHandsStay(),
    places: makeBodyPlaces(),
    change: leisure ? emptyFanChange() : null,
    standing: noStandingLines(sweep.directions),
    rested: noRestedShaft(),
    t: null,
    still: 0,
    novelty: new Float32Array(sweep.directions),
    looked: new Float64Array(sweep.directions / 2).fill(-Infinity),
    lastSeen: new Float32Array(sweep.directions).fill(Number.NaN),
  };
}

/**
 * Searches one picture; the answer is in `sight.sweep`, in working pixels about `sight.window`'s middle.
 * Or why nothing was looked for: no pose has been seen lately, so that nobody knows where the hands are, or whoever has them walks.
 */
export function lookForShaft(
  sight: ShaftSight,
  picture: Picture,
  t: Milliseconds,
  body: Body | null,
): Extract<ShaftReason, "no-hands" | "walking"> | null {
  const { tuning, window, sweep, work, background } = sight;
  if (!predictHands(sight.hands, t, body, tuning)) return "no-hands";
  const hands = sight.hands.now;
  // The first look at anything counts in full.
  const elapsed = sight.t === null ? tuning.stillLook : Math.max(0, t - sight.t) / 1000;
  sight.t = t;
  shrinkPicture(picture, chooseFactor(work.factor, hands.torso, sight.workingTorso), work, sight.rod, tuning.rodGain);
  const known = matchBackground(background, work);
  if (body !== null) placeBody(sight.places, body, background.swayX * work.factor, background.swayY * work.factor);
  if (isWalking(sight.places, hands.torso, tuning)) {
    feedBackground(background, work, hands.x, hands.y, elapsed, tuning.backgroundTime);
    return "walking";
  }
  if (sight.change !== null) feedChange(sight.change, work, background.swayX, background.swayY);
  const centreX = Math.round(hands.x / work.factor - 0.5);
  const centreY = Math.round(hands.y / work.factor - 0.5);
  const slack = background.swayX === 0 && background.swayY === 0 ? tuning.stillSlack : tuning.swaySlack;
  const reach = (tuning.reach * hands.torso) / work.factor;
  cutLineWindow(window, work, known ? background : null, centreX, centreY, reach, slack);
  if (body !== null)
    markBody(sight.marks, body, work.factor, window, hands.torso / work.factor, sight.rodAlong, tuning);
  const moved = known ? handsMoved(sight) / hands.torso : 0;
  if (!known) sight.stay.count = 0;
  const still = Math.exp(-((moved / tuning.stillReach) ** 2));
  sight.still = still;
  const look = {
    still,
    hands: sight.hands,
    marks: sight.marks,
    rodAlong: sight.rodAlong,
    awayX: hands.x / work.factor - 0.5 - centreX,
    awayY: hands.y / work.factor - 0.5 - centreY,
  };
  sweepLines(sweep, window, hands.torso / work.factor, look, tuning);
  if (sight.rodAlong) {
    borrowFromRod(sweep, hands.torso / work.factor, tuning);
    if (sight.rod !== null) sideByColour(sweep, window, work, sight.rod, 1 - still, hands.torso / work.factor, tuning);
  } else {
    goThrough(sweep, hands.torso / work.factor, tuning.throughWeight * still, tuning);
    doubtHands(sweep, hands.torso / work.factor, sight.hands, tuning);
  }
  rateNovelty(sight, t, still, known ? handsGone(moved, handsStayed(sight, t), tuning) : 0);
  feedBackground(background, work, hands.x, hands.y, elapsed, tuning.backgroundTime);
  return null;
}

/**
 * A direction that was not looked at for a while is seen anew, however still what lies there. Which end of a rod hides the other stays so for a while,
 * moving or not.
 */
function rateNovelty(sight: ShaftSight, t: Milliseconds, still: number, gone: number): void {
  const { sweep, novelty, looked, lastSeen, tuning } = sight;
  for (let i = 0; i < sweep.directions; i++) {
    if (sweep.wanted[i % looked.length] === 0) continue;
    lastSeen[i] = sweep.evidence[i] as number;
    const since = (t - (looked[i % looked.length] as number)) / 1000;
    const anew = tuning.stillWeight * Math.min(1, since / tuning.stillLook);
    const fresh = sweep.fresh[i] as number;
    const carried = (sweep.evidence[i] as number) > tuning.leastEvidence ? carriedAt(sight, i) : 1;
    novelty[i] = carried * noveltyOf(fresh, anew, still, gone, tuning);
    sweep.side[i] = (sweep.side[i] as number) * Math.min(1, since / tuning.sideLook);
  }
  for (let i = 0; i < looked.length; i++) if (sweep.wanted[i] === 1) looked[i] = t;
}

/** The odds that what is seen in a direction goes with the hands. */
function carriedAt(
  { sweep, window, work, hands, background, standing, tuning }: ShaftSight,
  direction: number,
): number {
  const seen = sweep.borrowed[direction] === 1 ? (direction + sweep.directions / 2) % sweep.directions : direction;
  const [cos, sin] = [Math.cos(seen * sweep.step), Math.sin(seen * sweep.step)];
  const [offset, end] = [sweep.offset[seen] as number, sweep.end[seen] as number];
  const { x, y, torso } = hands.now;
  return oddsCarried(
    standing,
    direction,
    window.centreX - background.swayX - sin * offset + cos * end,
    window.centreY - background.swayY + cos * offset + sin * end,
    x / work.factor - background.swayX,
    y / work.factor - background.swayY,
    torso / work.factor,
    tuning,
  );
}

/** The hands' place with the camera's sway taken out, picture pixels. */
const unswayed = ({ hands, background, work }: ShaftSight): { x: number; y: number } => ({
  x: hands.now.x - background.swayX * work.factor,
  y: hands.now.y - background.swayY * work.factor,
});

/** How far the hands are from their mean place of the last while, picture pixels. */
function handsMoved(sight: ShaftSight): number {
  const { x, y } = unswayed(sight);
  return Math.hypot(x - sight.background.handsX, y - sight.background.handsY);
}

function handsStayed(sight: ShaftSight, t: Milliseconds): number {
  const { x, y } = unswayed(sight);
  return stayedShare(sight.stay, t / 1000, x, y, sight.hands.now.torso, sight.tuning);
}

/** The whole factor that leaves the torso at most `workingTorso` pixels long, kept while it still nearly does. */
function chooseFactor(current: number, torso: number, workingTorso: number): number {
  const size = torso / current / workingTorso;
  if (size <= 1.05 && (size > 0.45 || current === 1)) return current;
  return Math.max(1, Math.ceil(torso / workingTorso));
}
