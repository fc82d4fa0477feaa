import type { CameraSpread } from "./camera-spread.ts";
import { answerOf } from "./filter-answer.ts";
import type { ShaftMotion } from "./filter-motion.ts";
import { predictMotion } from "./filter-predict.ts";
import { startMotion } from "./filter-start.ts";
import type { Transition } from "./filter-transition.ts";
import { filterTuning } from "./filter-tuning.ts";
import { twinOf } from "./filter-twin.ts";
import { updateMotion } from "./filter-update.ts";
import { habitualLean } from "./habitual-lean.ts";
import { gripToHead } from "./grip-convention.ts";
import { mirrorObservation, type LiftObservation } from "./lift-observation.ts";
import { liftShaft } from "./lift-shaft.ts";
import type { StationSettings } from "./station.ts";
import { secondsFromMilliseconds, milliseconds, type Metres, type Milliseconds } from "./units.ts";
import type { LiftRefusal } from "./view-shaft.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** What stays the same while a rep is filtered. */
export interface FilterSetting {
  readonly through: CameraSpread;
  readonly settings: Pick<StationSettings, "clubLength">;
}

/** One picture: what was seen in it, or null where no shaft was. Times rise. */
export interface FilterInput {
  readonly t: Milliseconds;
  readonly seen: LiftObservation | null;
}

/** One of at most two answers, the leans of which differ in sign. */
export interface Hypothesis {
  readonly motion: ShaftMotion;
  readonly logOdds: number;
  /** How it came about, newest first: for the smoother. */
  readonly past: PastStep | null;
}

/** The motion after a picture, and the one that was expected there with how errors carried over to it. */
export interface PastStep {
  readonly before: PastStep | null;
  readonly expected: ShaftMotion | null;
  readonly carried: Transition | null;
  readonly motion: ShaftMotion;
}

export interface ShaftFilterState {
  readonly hypotheses: readonly Hypothesis[];
  readonly depthSd: Metres | null;
}

/** What the first picture counts for, seconds. */
const firstSeconds = 0.05;

export const startFilter: ShaftFilterState = { hypotheses: [], depthSd: null };

export interface FilterOutput {
  /** The likelier answer; null before the first shaft that could be lifted. */
  readonly shaft: ShaftInWorld | null;
  /** Whether one lean is left. While false, the shaft's covariance counts the other one too. */
  readonly settled: boolean;
  readonly refusal: LiftRefusal | null;
}

/** `keepPast` false forgets all but the present: for a filter that runs for hours. */
export function filterShaft(
  state: ShaftFilterState,
  { t, seen }: FilterInput,
  { through, settings }: FilterSetting,
  keepPast = false,
): { readonly state: ShaftFilterState; readonly output: FilterOutput } {
  const { upright, camera } = through;
  const observation = seen && camera.handed === "left" ? mirrorObservation(seen, camera.width) : seen;
  const length = gripToHead(settings);
  if (state.hypotheses.length === 0) {
    if (!observation) return { state, output: { shaft: null, settled: false, refusal: null } };
    return begin({ ...observation, t }, through, settings, keepPast);
  }
  const depthSd = observation?.depth.sd ?? state.depthSd ?? (0 as Metres);
  const carried = state.hypotheses.map((hypothesis): Hypothesis => {
    const { motion: expected, transition } = predictMotion(hypothesis.motion, t, depthSd);
    const seconds = secondsFromMilliseconds(milliseconds(t - hypothesis.motion.t));
    const inflate = Math.max(1, (2 * filterTuning.errorsLast) / Math.max(seconds, 1e-3));
    const update = observation && updateMotion(expected, observation, upright, length, inflate);
    const motion = update?.motion ?? expected;
    return {
      motion,
      logOdds: hypothesis.logOdds + (update?.logLikelihood ?? 0) / inflate + seconds * habitualLean(motion, length),
      past: keepPast ? { before: hypothesis.past, expected, carried: transition, motion } : null,
    };
  });
  const hypotheses = withTwin(prune(carried), upright, length);
  return { state: { hypotheses, depthSd }, output: { ...tell(hypotheses, through), refusal: null } };
}

function begin(
  observation: LiftObservation,
  through: CameraSpread,
  settings: FilterSetting["settings"],
  keepPast: boolean,
): ReturnType<typeof filterShaft> {
  const rightHanded: CameraSpread = { ...through, camera: through.upright };
  const lift = liftShaft(rightHanded, observation, settings);
  if (!lift.ok) return { state: startFilter, output: { shaft: null, settled: false, refusal: lift.reason } };
  const length = gripToHead(settings);
  const { sd } = observation.depth;
  const hypotheses = lift.candidates.map((shaft): Hypothesis => {
    const { motion } = updateMotion(startMotion(shaft, sd), observation, through.upright, length, 1, false);
    return {
      motion,
      logOdds: firstSeconds * habitualLean(motion, length),
      past: keepPast ? { before: null, expected: null, carried: null, motion } : null,
    };
  });
  const kept = prune(hypotheses);
  return { state: { hypotheses: kept, depthSd: sd }, output: { ...tell(kept, through), refusal: null } };
}

/** The likelier first, the other only while it is worth keeping; log odds against the likelier. */
function prune(hypotheses: readonly Hypothesis[]): Hypothesis[] {
  const [best, ...others] = hypotheses.toSorted((a, b) => b.logOdds - a.logOdds);
  if (!best) return [];
  return [best, ...others]
    .map((hypothesis) => ({ ...hypothesis, logOdds: hypothesis.logOdds - best.logOdds }))
    .filter(({ logOdds }) => logOdds > filterTuning.settledAt);
}

/**
 * Puts up the mirrored lean beside a single answer: where motion could not tell the two apart but a picture might, and where the habits of golf speak
 * plainly for the other one.
 */
function withTwin(hypotheses: Hypothesis[], camera: CameraSpread["upright"], length: number): Hypothesis[] {
  const [only, other] = hypotheses;
  if (!only || other) return hypotheses;
  const twin = twinOf(only.motion, camera, length);
  if (!twin) return hypotheses;
  const unusual = habitualLean(twin.motion, length) - habitualLean(only.motion, length) > filterTuning.plainHabit;
  if (!unusual && (twin.sds < 1 || twin.sds > filterTuning.twinWithin)) return hypotheses;
  const logOdds = Math.max(-0.5 * twin.sds ** 2, 0.5 * filterTuning.settledAt);
  return [only, { ...only, motion: twin.motion, logOdds }];
}

function tell(
  hypotheses: readonly Hypothesis[],
  through: CameraSpread,
): { shaft: ShaftInWorld | null; settled: boolean } {
  const [best, other] = hypotheses;
  if (!best) return { shaft: null, settled: false };
  const weight = other ? Math.exp(other.logOdds) : 0;
  const twin = other ? { motion: other.motion, odds: weight / (1 + weight) } : null;
  return { shaft: answerOf(best.motion, through, twin), settled: !other };
}
