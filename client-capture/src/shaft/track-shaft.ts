import { imagePoint } from "@overcue/shared-geometry/point";
import type { ShaftInImage, ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { Handed } from "@overcue/shared-geometry/station";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { milliseconds, pixels, radians, radiansPerSecond, type Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Picture } from "../picture/picture.ts";
import { findCandidates, type Candidate } from "./find-candidates.ts";
import { readHands, type Hands } from "./hands.ts";
import { cutLineWindow, makeLineWindow, type LineWindow } from "./line-window.ts";
import { makeLineSweep, sweepLines, type LineSweep } from "./line-sweep.ts";
import { refineLine } from "./refine-line.ts";
import { shaftTuning, type ShaftTuning } from "./shaft-tuning.ts";
import { emptyWorkPicture, shrinkPicture, type WorkPicture } from "./work-picture.ts";

/** What the tracker may be told beforehand; everything has a default. */
export interface ShaftTrackerOptions {
  readonly handed: Handed;
  /** Numbers to use in place of the shipped ones. */
  readonly tuning?: Partial<ShaftTuning>;
}

/** Everything the tracker remembers. It is changed in place by `trackShaft`: its arrays are allocated once and used again. */
export interface ShaftTrackerState {
  readonly handed: Handed;
  readonly tuning: ShaftTuning;
  readonly window: LineWindow;
  readonly sweep: LineSweep;
  now: WorkPicture;
  before: WorkPicture;
  beforeValid: boolean;
  hands: Hands | null;
  last: { t: Milliseconds; angle: number; rate: number; quality: number } | null;
}

export interface ShaftInput {
  readonly picture: Picture;
  readonly t: Milliseconds;
  /** The newest pose, perhaps of an earlier picture; null while there is none. */
  readonly body: Body | null;
}

/** `now` is for this picture; `lagged` is the better answer for an earlier one, null while there is none. */
export interface ShaftOutput {
  readonly now: ShaftInImage;
  readonly lagged: ShaftInImage | null;
}

export function startShaftTracker(options: ShaftTrackerOptions): ShaftTrackerState {
  const tuning: ShaftTuning = { ...shaftTuning, ...options.tuning };
  const half = Math.ceil(tuning.workingTorso * tuning.reach * 1.05) + 8;
  return {
    handed: options.handed,
    tuning,
    window: makeLineWindow(half),
    sweep: makeLineSweep(half, tuning),
    now: emptyWorkPicture(),
    before: emptyWorkPicture(),
    beforeValid: false,
    hands: null,
    last: null,
  };
}

/** One picture further. The state is changed in place and handed back. Never throws for what is in the picture. */
export function trackShaft(
  state: ShaftTrackerState,
  input: ShaftInput,
): { state: ShaftTrackerState; output: ShaftOutput } {
  const now = findShaft(state, input);
  return { state, output: { now, lagged: null } };
}

function findShaft(state: ShaftTrackerState, { picture, t, body }: ShaftInput): ShaftInImage {
  const hands = body === null ? state.hands : (readHands(body) ?? state.hands);
  if (hands === null) return { status: "lost", t, reason: "no-hands" };
  state.hands = hands;
  const { tuning, window, sweep } = state;
  takePicture(state, picture, hands.torso);
  const { factor } = state.now;
  const centreX = Math.round(hands.x / factor - 0.5);
  const centreY = Math.round(hands.y / factor - 0.5);
  cutLineWindow(window, state.now, state.beforeValid ? state.before : null, centreX, centreY);
  sweepLines(sweep, window, hands.torso / factor, tuning);
  const candidates = findCandidates(sweep, tuning);
  const best = chooseCandidate(state, candidates, t);
  if (best === null || best.evidence < tuning.leastEvidence) return lose(state, t, "no-line-found");
  return describe(state, picture, t, hands, best);
}

/** Shrinks the picture so that the torso takes at most `workingTorso` pixels; the picture before stays for comparison. */
function takePicture(state: ShaftTrackerState, picture: Picture, torso: number): void {
  const wanted = Math.max(1, Math.ceil(torso / state.tuning.workingTorso));
  const factor = Math.abs(torso / state.now.factor / state.tuning.workingTorso - 0.8) < 0.3 ? state.now.factor : wanted;
  const swap = state.before;
  state.before = state.now;
  state.now = swap;
  shrinkPicture(picture, factor, state.now);
  state.beforeValid = state.before.factor === factor && state.before.values.length === state.now.values.length;
}

function chooseCandidate(state: ShaftTrackerState, candidates: Candidate[], t: Milliseconds): Candidate | null {
  const { last, tuning } = state;
  let best: Candidate | null = null;
  let top = -Infinity;
  for (const candidate of candidates) {
    let score = candidate.evidence;
    if (last !== null) {
      const dt = (t - last.t) / 1000;
      const expected = last.angle + last.rate * dt;
      const away = Math.abs(wrapAngle(radians(candidate.angle - expected))) / (0.1 + 12 * dt);
      score -= last.quality * Math.min(0.5 * away * away, tuning.jumpCost);
    }
    if (score > top) {
      top = score;
      best = candidate;
    }
  }
  return best;
}

function lose(state: ShaftTrackerState, t: Milliseconds, reason: ShaftReason): ShaftInImage {
  if (state.last !== null) state.last.quality *= 0.7;
  return { status: "lost", t, reason };
}

function describe(
  state: ShaftTrackerState,
  picture: Picture,
  t: Milliseconds,
  hands: Hands,
  best: Candidate,
): ShaftInImage {
  const { factor } = state.now;
  const originX = (state.window.centreX + 0.5) * factor;
  const originY = (state.window.centreY + 0.5) * factor;
  const guess = {
    x: originX - Math.sin(best.angle) * best.offset * factor,
    y: originY + Math.cos(best.angle) * best.offset * factor,
    angle: best.angle,
    from: state.tuning.nearest * hands.torso,
    to: best.end * factor,
  };
  const fit = refineLine(picture, guess, hands.torso);
  const off = fit === null ? Infinity : Math.abs(wrapAngle(radians(fit.angle - best.angle)));
  const angle = wrapAngle(radians(fit !== null && off < 0.12 ? fit.angle : best.angle));
  const at = fit !== null && off < 0.12 ? fit : guess;
  const sd = fit !== null && off < 0.12 ? Math.hypot(fit.angleSd, 0.006) : 0.04;
  const rate = turnRate(state, t, angle);
  const along = (hands.x - at.x) * Math.cos(angle) + (hands.y - at.y) * Math.sin(angle);
  return {
    status: "tracked",
    t,
    grip: imagePoint(at.x + Math.cos(angle) * along, at.y + Math.sin(angle) * along),
    head: imagePoint(at.x + Math.cos(angle) * guess.to, at.y + Math.sin(angle) * guess.to),
    angle,
    sd: radians(sd),
    angularRate: radiansPerSecond(rate),
    offsetSd: pixels(fit?.acrossSd ?? 2 * factor),
    headSd: pixels(0.1 * hands.torso),
    rodSeen: false,
  };
}

function turnRate(state: ShaftTrackerState, t: Milliseconds, angle: number): number {
  const { last } = state;
  const dt = last === null ? 0 : (t - last.t) / 1000;
  const turn = last === null ? 0 : wrapAngle(radians(angle - last.angle));
  const rate = dt > 0 && Math.abs(turn) < 1.2 ? turn / dt : 0;
  state.last = { t: milliseconds(t), angle, rate, quality: 1 };
  return rate;
}
