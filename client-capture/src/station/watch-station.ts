import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { solveStation, type StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { findSticks, type CameraHints } from "./find-sticks.ts";
import { judgeSticks } from "./judge-sticks.ts";
import { lookForStick } from "./look-for-stick.ts";

type Solved = Exclude<StationSolution, { verdict: "refused" }>;

/** What a check between reps says of the station. */
export type StationNews =
  | { readonly news: "steady" }
  /** Too few sticks could be seen to tell: somebody stands in front of them. */
  | { readonly news: "not-seen" }
  /** Something moved on this check; it is believed when the next one says so too. */
  | { readonly news: "wait" }
  /** All sticks moved together: the phone was bumped. Solved again where `solution` is given. */
  | { readonly news: "phone-moved"; readonly solution: Solved | null; readonly sticks: readonly StickInImage[] }
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
  calibration: StationWatch["calibration"] = "station",
): StationWatch {
  return { settings, hints, sticks, calibration, moved: 0 };
}

interface Checked {
  readonly state: StationWatch;
  readonly output: StationNews;
}

/**
 * Looks at the sticks again between two reps. A phone that was bumped or a stick that was kicked is told on the second check in a row that sees it, so that
 * one leg in the way alarms nobody. While something is out of place readings are `suspect`; a bumped phone is solved again by itself where all
 * the sticks are still seen.
 */
export function watchStation(watch: StationWatch, picture: Picture): Checked {
  const looks = watch.sticks.map((stick) => ({ line: stick.line, ...lookForStick(picture, stick) }));
  const still = looks.filter(({ seen }) => seen === "still").length;
  const away = looks.filter((look) => look.seen === "moved");
  const hidden = looks.length - still - away.length;
  if (away.length === 0 && still >= Math.min(2, looks.length)) {
    // What is hidden was not seen to be back in its place: a kicked stick stays kicked until it is.
    const calibration = hidden === 0 ? "station" : watch.calibration;
    return { state: { ...watch, calibration, moved: 0 }, output: { news: "steady" } };
  }
  if (away.length === 0 && still > 0) return { state: { ...watch, moved: 0 }, output: { news: "not-seen" } };
  const moved = watch.moved + 1;
  if (moved < 2)
    return { state: { ...watch, moved }, output: { news: still + away.length === 0 ? "not-seen" : "wait" } };
  const [kicked] = away;
  // Two sticks where they were hold the phone's place: whatever else moved was kicked.
  if (kicked && still >= 2) {
    return {
      state: { ...watch, moved, calibration: "suspect" },
      output: { news: "stick-moved", line: kicked.line },
    };
  }
  return lookAnew({ ...watch, moved }, picture, away.length === looks.length ? away.map(({ stick }) => stick) : null);
}

/** None or one of the sticks is where it was. */
function lookAnew(watch: StationWatch, picture: Picture, nearby: readonly StickInImage[] | null): Checked {
  const { settings, hints } = watch;
  const size = { width: pixels(picture.width), height: pixels(picture.height) };
  const solve = (sticks: readonly StickInImage[]): StationSolution =>
    solveStation({ sticks, settings, ...size, ...hints });
  const near = nearby && judgeSticks(picture, nearby, solve, settings);
  const far = near ? null : findSticks(picture, settings, hints);
  const again = near ?? (far?.found === true ? far : null);
  return again
    ? {
        state: { ...watch, sticks: again.sticks, moved: 0, calibration: "station" },
        output: { news: "phone-moved", solution: again.solution, sticks: again.sticks },
      }
    : {
        state: { ...watch, calibration: "suspect" },
        output: { news: "phone-moved", solution: null, sticks: watch.sticks },
      };
}
