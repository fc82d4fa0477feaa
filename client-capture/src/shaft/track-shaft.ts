import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Handed } from "@overcue/shared-geometry/station";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Picture } from "../picture/picture.ts";
import { describeShaft } from "./describe-shaft.ts";
import { findCandidates } from "./find-candidates.ts";
import { fitCandidate, type FittedCandidate } from "./fit-candidate.ts";
import { lookForShaft, openSight, type ShaftSight } from "./look-for-shaft.ts";
import { arrivalOdds } from "./arrival-odds.ts";
import { correctHands } from "./predict-hands.ts";
import { readFilter } from "./read-filter.ts";
import { shaftTuning, type ShaftTuning } from "./shaft-tuning.ts";
import { makeTurnFilter, predictTurn, weighTurn, type TurnFilter } from "./turn-filter.ts";
import { wantDirections } from "./want-directions.ts";
import { weighDirections } from "./weigh-directions.ts";

/** What the tracker may be told beforehand; all but the hand has a default. */
export interface ShaftTrackerOptions {
  readonly handed: Handed;
  /** How long what each picture showed is kept for `smoothShaft`, in milliseconds; 0 keeps nothing. Default 0. */
  readonly keepEvidence?: Milliseconds;
  /**
   * `live` keeps up with a camera; `leisure` looks finer and everywhere, for a clip. Default: `leisure` where evidence is kept without
   * end, `live` otherwise.
   */
  readonly effort?: "live" | "leisure";
  /** Numbers to use in place of the shipped ones. */
  readonly tuning?: Partial<ShaftTuning>;
}

/** What one picture showed, for the full pass: about 2 kB. */
export interface ShaftEvidence {
  readonly handed: Handed;
  readonly t: Milliseconds;
  readonly hands: { readonly x: number; readonly y: number; readonly torso: number } | null;
  /** Evidence in nats for each direction of the sweep; empty where nobody knew where the hands were. */
  readonly sweep: Float32Array;
  readonly candidates: readonly FittedCandidate[];
}

/** Everything the tracker remembers. It is changed in place by `trackShaft`: its arrays are allocated once and used again. */
export interface ShaftTrackerState {
  readonly handed: Handed;
  readonly tuning: ShaftTuning;
  readonly keepEvidence: number;
  readonly leisure: boolean;
  readonly sight: ShaftSight;
  readonly filter: TurnFilter;
  readonly likelihood: Float32Array;
  readonly evidence: ShaftEvidence[];
  t: Milliseconds | null;
  count: number;
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
  const keepEvidence = options.keepEvidence ?? 0;
  const leisure = (options.effort ?? (keepEvidence === Infinity ? "leisure" : "live")) === "leisure";
  const tuning: ShaftTuning = { ...shaftTuning, ...options.tuning };
  const sight = openSight(tuning, leisure ? tuning.workingTorsoAtLeisure : tuning.workingTorso);
  return {
    handed: options.handed,
    tuning,
    keepEvidence,
    leisure,
    sight,
    filter: makeTurnFilter(arrivalOdds(sight.sweep.directions, options.handed, tuning)),
    likelihood: new Float32Array(sight.sweep.directions),
    evidence: [],
    t: null,
    count: 0,
  };
}

/** One picture further. The state is changed in place and handed back. Never throws for what is in the picture. */
export function trackShaft(
  state: ShaftTrackerState,
  input: ShaftInput,
): { state: ShaftTrackerState; output: ShaftOutput } {
  const { t, picture, body } = input;
  const { sight, filter, likelihood, tuning } = state;
  if (state.t !== null) predictTurn(filter, Math.max(0, t - state.t) / 1000, tuning);
  state.t = t;
  state.count++;
  if (!state.leisure) wantDirections(sight.sweep, filter, state.count, tuning);
  const looked = lookForShaft(sight, picture, t, body);
  if (!looked) {
    keep(state, { t, handed: state.handed, hands: null, sweep: new Float32Array(0), candidates: [] });
    return { state, output: { now: { status: "lost", t, reason: "no-hands" }, lagged: null } };
  }
  weighDirections(sight.sweep.evidence, tuning, likelihood);
  weighTurn(filter, likelihood);
  const reading = readFilter(filter.belief, filter.directions, filter.absent, tuning.nearMass);
  const most = state.leisure ? tuning.candidatesAtLeisure : tuning.candidates;
  const candidates = findCandidates(sight.sweep, most, tuning).map((candidate) =>
    fitCandidate(sight, picture, candidate),
  );
  const { x, y, torso } = sight.hands.now;
  keep(state, { t, handed: state.handed, hands: { x, y, torso }, sweep: sight.sweep.evidence.slice(), candidates });
  const now = describeShaft(t, reading, candidates, sight.hands.now, tuning);
  if (now.status === "tracked" && reading.mass > tuning.correctingMass) followShaft(sight, now);
  return { state, output: { now, lagged: null } };
}

/** Lets the shaft's line pull the hands onto itself, across the line. */
function followShaft(sight: ShaftSight, shaft: Extract<ShaftInImage, { status: "tracked" }>): void {
  const { x, y } = sight.hands.now;
  const across = -Math.sin(shaft.angle) * (shaft.grip.x - x) + Math.cos(shaft.angle) * (shaft.grip.y - y);
  correctHands(sight.hands, shaft.angle, across, sight.tuning.lineSd);
}

function keep(state: ShaftTrackerState, evidence: ShaftEvidence): void {
  if (state.keepEvidence <= 0) return;
  state.evidence.push(evidence);
  while (state.evidence.length > 0 && (state.evidence[0]?.t ?? 0) < evidence.t - state.keepEvidence)
    state.evidence.shift();
}
