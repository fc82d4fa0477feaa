import { solveStation, type StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { findSticks, type CameraHints } from "./find-sticks.ts";
import { snapStick } from "./snap-stick.ts";
import { stationTuning } from "./station-tuning.ts";

type Solved = Exclude<StationSolution, { verdict: "refused" }>;

/** What a check between reps says of the station. */
export type StationNews =
  | { readonly news: "steady" }
  /** Too few sticks could be seen to tell: somebody stands in front of them. */
  | { readonly news: "not-seen" }
  /** Something moved on this check; it is believed when the next one says so too. */
  | { readonly news: "wait" }
  /** All sticks moved together: the phone was bumped. Solved again where `solution` is given. */
  | { readonly news: "phone-moved"; readonly solution: Solved | null }
  | { readonly news: "stick-moved"; readonly line: StationLine };

export interface StationWatch {
  readonly settings: StationSettings;
  readonly hints: CameraHints;
  /** The sticks as the camera in use was solved from them. */
  readonly sticks: readonly StickInImage[];
  /** `suspect` once something moved, until it is put right. */
  readonly calibration: "station" | "suspect";
  /** Checks in a row on which something had moved. */
  readonly moved: number;
}

export function startWatch(
  settings: StationSettings,
  sticks: readonly StickInImage[],
  hints: CameraHints = {},
): StationWatch {
  return { settings, hints, sticks, calibration: "station", moved: 0 };
}

/**
 * Looks at the sticks again between two reps. A phone that was bumped or a stick that was kicked is told on the second check in a row that sees it, so that
 * one leg in the way alarms nobody. While something is out of place readings are `suspect`; a bumped phone is solved again by itself where all
 * the sticks are still seen.
 */
export function watchStation(
  watch: StationWatch,
  picture: Picture,
): { readonly state: StationWatch; readonly output: StationNews } {
  const moves = watch.sticks.map((stick) => moveOf(picture, stick));
  const seen = moves.filter((move) => move !== null);
  const still = seen.filter(({ moved }) => !moved);
  if (seen.length === watch.sticks.length && still.length === seen.length) {
    return { state: { ...watch, calibration: "station", moved: 0 }, output: { news: "steady" } };
  }
  if (still.length >= 2 && seen.length === still.length) {
    return { state: { ...watch, moved: 0 }, output: { news: "steady" } };
  }
  // Two sticks where they were hold the phone's place: whatever else moved was kicked.
  const kicked = still.length >= 2 ? watch.sticks.find((_, index) => moves[index]?.moved) : undefined;
  if (kicked) {
    const state = { ...watch, moved: watch.moved + 1, calibration: "suspect" as const };
    return state.moved < 2
      ? { state: { ...state, calibration: watch.calibration }, output: { news: "wait" } }
      : { state, output: { news: "stick-moved", line: kicked.line } };
  }
  return lookAnew(watch, picture, seen.length);
}

/** None or one of the sticks is where it was: the phone moved, or they are hidden. */
function lookAnew(
  watch: StationWatch,
  picture: Picture,
  seenNearby: number,
): { readonly state: StationWatch; readonly output: StationNews } {
  const { settings, hints } = watch;
  const found = findSticks(picture, settings, hints);
  const near = solveNearby(watch, picture);
  const solution = near?.solution ?? (found.found ? found.solution : null);
  const sticks = near?.sticks ?? (found.found ? found.sticks : null);
  if (!solution && seenNearby === 0 && watch.moved === 0) {
    // Seen nowhere, for the first time: as likely hidden as moved.
    return { state: { ...watch, moved: 1 }, output: { news: "not-seen" } };
  }
  const moved = watch.moved + 1;
  if (moved < 2) return { state: { ...watch, moved }, output: { news: "wait" } };
  return solution && sticks
    ? { state: { ...watch, sticks, moved: 0, calibration: "station" }, output: { news: "phone-moved", solution } }
    : { state: { ...watch, moved, calibration: "suspect" }, output: { news: "phone-moved", solution: null } };
}

interface Move {
  readonly stick: StickInImage;
  readonly moved: boolean;
}

/** A stick looked for where it was; null where nothing like it is within reach. */
function moveOf(picture: Picture, stick: StickInImage): Move | null {
  const { watchReach, kickReach } = stationTuning;
  const close = snapStick(picture, stick.line, stick.near.at, stick.far.at, watchReach);
  const snapped = close.ok ? close : snapStick(picture, stick.line, stick.near.at, stick.far.at, kickReach);
  if (!snapped.ok) return null;
  const off = Math.max(acrossFrom(stick, snapped.stick.near.at), acrossFrom(stick, snapped.stick.far.at));
  return { stick: snapped.stick, moved: off > stationTuning.movedBy };
}

/** All sticks a little off, seen again, and a camera that explains them: its sticks and solution. */
function solveNearby(
  watch: StationWatch,
  picture: Picture,
): { sticks: readonly StickInImage[]; solution: Solved } | null {
  const moves = watch.sticks.map((stick) => moveOf(picture, stick));
  const sticks = moves.flatMap((move) => (move ? [move.stick] : []));
  if (sticks.length < watch.sticks.length) return null;
  const size = { width: pixels(picture.width), height: pixels(picture.height) };
  const solution = solveStation({ sticks, settings: watch.settings, ...size, ...watch.hints });
  return solution.verdict === "refused" ? null : { sticks, solution };
}

function acrossFrom({ near, far }: StickInImage, point: { readonly x: number; readonly y: number }): number {
  const dx = far.at.x - near.at.x;
  const dy = far.at.y - near.at.y;
  return Math.abs((point.x - near.at.x) * dy - (point.y - near.at.y) * dx) / Math.hypot(dx, dy);
}
