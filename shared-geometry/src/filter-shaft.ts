import type { CameraSpread } from "./camera-spread.ts";
import { answerOf } from "./filter-answer.ts";
import type { ShaftMotion } from "./filter-motion.ts";
import { startMotion } from "./filter-start.ts";
import { stepMotion } from "./filter-step.ts";
import { filterTuning } from "./filter-tuning.ts";
import { gripToHead } from "./grip-convention.ts";
import { leanSd } from "./lean-sd.ts";
import { followPaths, oddsOfLeans, startPaths, type LeanPaths } from "./lean-paths.ts";
import { nextNode } from "./lean-nodes.ts";
import { mirrorObservation, type LiftObservation } from "./lift-observation.ts";
import { sightOfShaft } from "./sight-of-shaft.ts";
import type { StationSettings } from "./station.ts";
import type { Metres, Milliseconds } from "./units.ts";
import { unsettledLean } from "./unsettled-lean.ts";
import type { LiftRefusal } from "./view-shaft.ts";
import { weighedOf, type WeighedLean } from "./weigh-leans.ts";
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

export interface ShaftFilterState {
  readonly motion: ShaftMotion | null;
  /** The leans that the pictures so far allow. */
  readonly paths: LeanPaths | null;
  readonly depthSd: Metres;
  /** Mean square distance of leans that may be true beside the one followed, square radians. */
  readonly unsettled: number;
}

export const startFilter: ShaftFilterState = { motion: null, paths: null, depthSd: 0 as Metres, unsettled: 0 };

export interface FilterOutput {
  /** Null before the first shaft that could be lifted. */
  readonly shaft: ShaftInWorld | null;
  readonly refusal: LiftRefusal | null;
}

/** The shaft as it happens: every lean that the pictures so far allow is weighed, the likeliest is followed, and the others widen its spread. */
export function filterShaft(
  state: ShaftFilterState,
  { t, seen }: FilterInput,
  { through, settings }: FilterSetting,
): { readonly state: ShaftFilterState; readonly output: FilterOutput } {
  const observation = uprightOf(t, seen, through);
  const camera = through.upright;
  const length = gripToHead(settings);
  const newest = observation && nextNode(state.paths?.node ?? null, observation, camera, length);
  const node = newest && { ...newest, pace: Math.max(newest.pace, filterTuning.leastTurnPace) };
  const paths = node ? (state.paths ? followPaths(state.paths, node) : startPaths(node)) : state.paths;
  const lean: WeighedLean | null = node && paths ? weighedOf(node, oddsOfLeans(paths, null)) : null;
  const depthSd = observation?.depth.sd ?? state.depthSd;

  const about = lean?.toHead ?? state.motion?.toHead;
  const sight = observation && about ? sightOfShaft(observation, camera, settings, about) : null;
  const seenNow = typeof sight === "string" ? null : sight;
  if (typeof sight === "string" && state.motion === null) return { state, output: { shaft: null, refusal: sight } };
  const motion = state.motion ? stepMotion(state.motion, t, seenNow, lean).motion : seenNow && startMotion(seenNow);
  if (motion === null) return { state, output: { shaft: null, refusal: null } };
  const unsettled = lean ? unsettledLean(lean, motion.toHead, leanSd(motion, camera)) : state.unsettled;
  return {
    state: { motion, paths, depthSd, unsettled },
    output: { shaft: answerOf(motion, through, { length, depthSd }, unsettled, observation), refusal: null },
  };
}

/** A right-handed golfer's observation, dated by the input. */
export function uprightOf(
  t: Milliseconds,
  seen: LiftObservation | null,
  { camera }: CameraSpread,
): LiftObservation | null {
  return seen && { ...(camera.handed === "left" ? mirrorObservation(seen, camera.width) : seen), t };
}
