import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Handed } from "@overcue/shared-geometry/station";
import { milliseconds, type Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Picture } from "../picture/picture.ts";
import type { Turned } from "./background-state.ts";
import { describeShaft, nothingFound, type ShaftFinding } from "./describe-shaft.ts";
import { correctHands } from "./correct-hands.ts";
import { fanOdds } from "./fan-odds.ts";
import { findFans } from "./find-fans.ts";
import { findCandidates } from "./find-candidates.ts";
import { fitCandidate, type FittedCandidate } from "./fit-candidate.ts";
import { handsRise, handsSd, handsSpeed } from "./hands-track.ts";
import type { RodColour } from "./rod-likeness.ts";
import { makeLagMemory, takeLagged, type LagMemory } from "./lagged-answer.ts";
import { lookForShaft, openSight, type ShaftSight } from "./look-for-shaft.ts";
import { arrivalOdds, mixArrival, type ArrivalOdds } from "./arrival-odds.ts";
import { longestPlausible, type SeenLength } from "./longest-plausible.ts";
import { readFilter, type FilterReading } from "./read-filter.ts";
import { comeOut, type Emergence } from "./come-out.ts";
import { seenLong } from "./seen-long.ts";
import { shaftTuning, type ShaftTuning } from "./shaft-tuning.ts";
import { makeTurnFilter, predictTurn, weighTurn, type TurnFilter } from "./turn-filter.ts";
import { turnedSinceStart } from "./slow-background.ts";
import { uncoverBackground } from "./uncover-background.ts";
import { wantDirections } from "./want-directions.ts";
import { weighFans } from "./weigh-fans.ts";
import { weighEmergence } from "./weigh-emergence.ts";
import { lowness, weighLowHands, weighRestingHands } from "./weigh-low-hands.ts";
import { clutterLevel, weighDirections } from "./weigh-directions.ts";

/** `live` keeps up with a camera; `leisure` looks finer and everywhere, for a clip. */
export type Effort = "live" | "leisure";

/** What the tracker may be told beforehand; all but the hand has a default. */
export interface ShaftTrackerOptions {
  readonly handed: Handed;
  /** How long what each picture showed is kept for `smoothShaft`, in milliseconds; 0 keeps nothing. Default 0. */
  readonly keepEvidence?: Milliseconds;
  /** The practice rod's colour where it was learned (`learnRodColour`); null or absent: go by brightness and motion alone. */
  readonly rodColour?: RodColour | null;
  /** Whether a practice rod lies along the shaft and out of the butt. Default: where its colour is known. */
  readonly rodAlong?: boolean;
  /** Default: `live`. */
  readonly effort?: Effort;
  /** Whether `lagged` answers are wanted; they cost a tenth of the tracker's time. Default false. */
  readonly lagged?: boolean;
  /** Numbers to use in place of the shipped ones. */
  readonly tuning?: Partial<ShaftTuning>;
}

/** What one picture showed, for the full pass: about 2 kB. */
export interface ShaftEvidence extends ShaftFinding {
  readonly handed: Handed;
  /** Evidence in nats for each direction of the sweep; empty where nobody knew where the hands were. */
  readonly sweep: Float32Array;
  /** How far what was seen there is more than another look at the same still thing, 0 to 1. */
  readonly novelty: Float32Array;
  /** Which end is the head's, as the sweep had it. */
  readonly side: Float32Array;
  /** What clutter reached there, nats. */
  readonly clutter: number;
  /** How much of coming out of end-on with the hands high is weighed in this picture, 0 to 1. */
  readonly emerging: number;
}

/** Everything the tracker remembers. It is changed in place by `trackShaft`: its arrays are allocated once and used again. */
export interface ShaftTrackerState {
  readonly handed: Handed;
  readonly tuning: ShaftTuning;
  readonly keepEvidence: number;
  readonly leisure: boolean;
  readonly sight: ShaftSight;
  readonly filter: TurnFilter;
  readonly arrival: ArrivalOdds;
  readonly likelihood: Float32Array;
  /** Null where nobody asked for lagged answers. */
  readonly lag: LagMemory | null;
  readonly evidence: ShaftEvidence[];
  t: Milliseconds | null;
  count: number;
  /** When the shaft was last found; null if never. */
  followed: Milliseconds | null;
  /** Whether the odds named one direction in the last picture. */
  sure: boolean;
  /** How far the shaft was seen at its length in the last picture, 0 to 1. */
  long: number;
  readonly emergence: Emergence;
  readonly length: SeenLength;
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
  readonly turned: Turned;
}

export function startShaftTracker(options: ShaftTrackerOptions): ShaftTrackerState {
  const keepEvidence = options.keepEvidence ?? 0;
  const leisure = options.effort === "leisure";
  const tuning: ShaftTuning = { ...shaftTuning, ...options.tuning };
  const sight = openSight(
    tuning,
    leisure,
    options.rodColour ?? null,
    options.rodAlong ?? (options.rodColour ?? null) !== null,
  );
  const arrival = arrivalOdds(sight.sweep.directions, options.handed, tuning);
  return {
    handed: options.handed,
    tuning,
    keepEvidence,
    leisure,
    sight,
    filter: makeTurnFilter(arrival.low),
    arrival,
    likelihood: new Float32Array(sight.sweep.directions),
    lag:
      options.lagged === true
        ? makeLagMemory(tuning.lag, makeTurnFilter(arrival.low), { ...nothingFound, t: milliseconds(0) })
        : null,
    evidence: [],
    t: null,
    count: 0,
    followed: null,
    sure: false,
    long: 0,
    emergence: { out: 0, fresh: 0 },
    length: { length: 0, rate: 0, t: null },
  };
}

/** One picture further. The state is changed in place and handed back. Never throws for what is in the picture. */
export function trackShaft(
  state: ShaftTrackerState,
  input: ShaftInput,
): { state: ShaftTrackerState; output: ShaftOutput } {
  const { t, picture, body } = input;
  const { sight, filter, likelihood, tuning } = state;
  const elapsed = state.t === null ? 0 : Math.max(0, t - state.t) / 1000;
  if (state.t !== null) predictTurn(filter, elapsed, state.long, tuning);
  const hurried = isHurried(state, state.t, t);
  state.t = t;
  state.count++;
  // The first picture is looked at all round, lest what is looked at first is taken for the shaft.
  if (!state.leisure && sight.t !== null) {
    wantDirections(sight.sweep, filter, state.count, hurried || (sight.rodAlong && !state.sure), tuning);
  }
  const whyNot = lookForShaft(sight, picture, t, body);
  if (whyNot !== null) {
    likelihood.fill(1);
    const reading = readFilter(filter.belief, filter.directions, filter.absent, tuning.nearMass);
    return {
      state,
      output: answer(state, { ...nothingFound, t, whyNot }, nothing, 0, 0, reading),
    };
  }
  const high = highness(sight.hands.now.height, tuning);
  mixArrival(state.arrival, high, filter);
  const clutter = clutterLevel(sight.lastSeen, sight.rodAlong, tuning);
  weighDirections(sight.sweep.evidence, sight.sweep.side, sight.novelty, clutter, tuning, likelihood);
  const emerging = Math.max(high, rising(sight)) * state.emergence.fresh;
  weighEmergence(likelihood, state.arrival.high, emerging);
  weighLowHands(likelihood, howLow(sight), elapsed, tuning);
  weighRestingHands(likelihood, state.arrival.aside, howResting(sight), elapsed, tuning);
  const fans = sight.change !== null && fanOdds(filter, tuning) > tuning.fanFromOdds ? findFans(sight) : noFans;
  weighFans(filter, fans, likelihood, elapsed, tuning);
  weighTurn(filter, likelihood);
  const reading = readFilter(filter.belief, filter.directions, filter.absent, tuning.nearMass);
  state.sure = reading.mass >= tuning.leastMass && reading.opposite <= tuning.mostOpposite;
  const finding = readPicture(state, picture, t, reading, fans);
  state.long = finding.long;
  comeOut(state.emergence, finding.long, elapsed, tuning);
  const output = answer(state, finding, sight.sweep.evidence, clutter, emerging, reading);
  if (output.now.status === "tracked") followShaft(state, output.now);
  return { state, output };
}

const nothing = new Float32Array(0);
const noFans: readonly FittedCandidate[] = [];

/** Whether a shaft that was followed until just now was not found in the picture before, while nobody knows well where the hands are: then it is to be found again at once. */
const isHurried = (
  { sight, followed, tuning }: ShaftTrackerState,
  before: Milliseconds | null,
  t: Milliseconds,
): boolean =>
  before !== null &&
  followed !== null &&
  followed < before &&
  t - followed < 1000 * tuning.hurryFor &&
  handsSd(sight.hands) > tuning.hurrySd;

function answer(
  state: ShaftTrackerState,
  finding: ShaftFinding,
  sweep: Float32Array,
  clutter: number,
  emerging: number,
  reading: FilterReading,
): ShaftOutput {
  const { filter, tuning } = state;
  keep(state, finding, sweep, clutter, emerging);
  return {
    now: describeShaft(finding, reading, tuning),
    lagged: state.lag === null ? null : takeLagged(state.lag, filter, state.likelihood, finding, state.arrival, tuning),
    turned: turnedSinceStart(state.sight.background),
  };
}

function readPicture(
  state: ShaftTrackerState,
  picture: Picture,
  t: Milliseconds,
  reading: FilterReading,
  fans: readonly FittedCandidate[],
): ShaftFinding {
  const { sight, tuning } = state;
  const most = state.leisure ? tuning.candidatesAtLeisure : tuning.candidates;
  const lines = findCandidates(sight.sweep, most, tuning).map((each) => fitCandidate(sight, picture, each));
  const candidates = fans.length === 0 ? lines : [...lines, ...fans];
  const { x, y, torso, seen, height } = sight.hands.now;
  const longest = longestPlausible(state.length, t, handsSpeed(sight.hands), tuning);
  const inside = x >= 0 && y >= 0 && x < picture.width && y < picture.height;
  return {
    t,
    hands: {
      x,
      y,
      torso,
      seen,
      inside,
      high: highness(height, tuning),
      low: howLow(sight),
      rests: howResting(sight),
    },
    candidates,
    long: seenLong(candidates, reading, torso, longest, tuning),
    longest,
  };
}

/** How far the hands go up, 0 to 1, with a rod along the shaft: the club goes up with them, and its butt end points down. Without a rod there is no other end. */
function rising({ hands, rodAlong, tuning }: ShaftSight): number {
  if (!rodAlong) return 0;
  return Math.max(0, Math.min(1, (handsRise(hands) - tuning.risesFrom) / (tuning.risesTo - tuning.risesFrom)));
}

const highness = (height: number, { highFrom, highTo }: ShaftTuning): number =>
  Math.max(0, Math.min(1, (height - highFrom) / (highTo - highFrom)));

/** How low the hands are, 1 as at address; 0 where a rod lies along the shaft, for its butt end does point up. */
const howLow = ({ rodAlong, hands, tuning }: ShaftSight): number => (rodAlong ? 0 : lowness(hands.now.height, tuning));

/** How far the hands rest as at address: low, and where they were. */
const howResting = (sight: ShaftSight): number => howLow(sight) * sight.still;

/** Lets the shaft's line pull the hands onto itself, across the line, and remembers how long it looks and where it rests. */
function followShaft(state: ShaftTrackerState, shaft: Extract<ShaftInImage, { status: "tracked" }>): void {
  const { sight, length, tuning } = state;
  const { t, grip, head, angle, angularRate } = shaft;
  const { torso } = sight.hands.now;
  // Out of the picture it goes on beyond what a club looks at most.
  const reach = head === null ? tuning.reach * torso : Math.hypot(head.x - grip.x, head.y - grip.y);
  state.followed = t;
  if (head !== null) {
    length.length = reach / torso;
    length.rate = angularRate;
    length.t = t;
  }
  uncoverBackground(sight.rested, sight.background, sight.work, { t, ...grip, angle, reach }, torso, tuning);
  correctHands(sight.hands, angle, grip.x, grip.y, angularRate, tuning);
}

function keep(
  state: ShaftTrackerState,
  finding: ShaftFinding,
  sweep: Float32Array,
  clutter: number,
  emerging: number,
): void {
  if (state.keepEvidence <= 0) return;
  const { evidence } = state;
  evidence.push({
    ...finding,
    handed: state.handed,
    sweep: sweep.slice(),
    novelty: sweep.length === 0 ? nothing : state.sight.novelty.slice(),
    side: sweep.length === 0 ? nothing : state.sight.sweep.side.slice(),
    clutter,
    emerging,
  });
  while ((evidence[0]?.t ?? Infinity) < finding.t - state.keepEvidence) evidence.shift();
}
