import { solveStation, type StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationInput } from "@overcue/shared-geometry/station-fit";
import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { judgeSticks, type Judged } from "./judge-sticks.ts";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { looksLikeStation } from "./looks-like-station.ts";
import { settledLines, type SettledLine } from "./settled-lines.ts";

export type FoundStation =
  | {
      readonly found: true;
      readonly sticks: readonly StickInImage[];
      readonly solution: Exclude<StationSolution, { verdict: "refused" }>;
    }
  | { readonly found: false; readonly reason: "no-lines" | "no-station-among-them" };

/** What is known of the camera beforehand, as `solveStation` takes it. */
export type CameraHints = Pick<StationInput, "focal" | "gravity" | "ball" | "laying">;

/**
 * The station's sticks without anybody pointing at them: long straight pieces that stand out from the ground, snapped, and of these the two or three that a
 * camera behind the golfer explains best with the stated lengths and distances. Only a first guess: the user confirms it.
 */
export function findSticks(picture: Picture, settings: StationSettings, hints: CameraHints = {}): FoundStation {
  const lines = settledLines(picture);
  if (lines.length < 2) return { found: false, reason: "no-lines" };
  const wanted = stationLines.filter((line) => settings.sticksPresent.includes(line));
  const size = { width: pixels(picture.width), height: pixels(picture.height) };
  let best: ({ readonly score: number } & Judged) | null = null;
  for (const chosen of choices(lines.length, wanted.length)) {
    const named = nameSticks(
      chosen.map((index) => lines[index]),
      wanted,
      settings,
    );
    if (!named || !looksLikeStation(named, settings, picture, hints.focal?.focal)) continue;
    const judged = judgeSticks(
      picture,
      named,
      (sticks) => solveStation({ sticks, settings, ...size, ...hints }),
      settings,
    );
    if (judged && (!best || judged.score > best.score)) best = judged;
  }
  return best
    ? { found: true, sticks: best.sticks, solution: best.solution }
    : { found: false, reason: "no-station-among-them" };
}

/** Names from the picture's order: seen from behind, a right-handed golfer's heels are to the left of the toes and these of the ball. */
function nameSticks(
  chosen: readonly (SettledLine | undefined)[],
  wanted: readonly StationLine[],
  settings: StationSettings,
): StickInImage[] | null {
  const lines = chosen.filter((line) => line !== undefined);
  if (lines.length < chosen.length) return null;
  const middle = ({ stick }: SettledLine): number => (stick.near.at.x + stick.far.at.x) / 2;
  const ordered = lines.toSorted((a, b) =>
    settings.handed === "right" ? middle(b) - middle(a) : middle(a) - middle(b),
  );
  return ordered.map(({ stick }, index) => ({ ...stick, line: wanted[index] ?? "ball-line" }));
}

/** All ways to choose `count` of `from` things, earlier things first. */
function* choices(from: number, count: number, first = 0): Generator<number[]> {
  if (count === 0) {
    yield [];
    return;
  }
  for (let index = first; index <= from - count; index++) {
    for (const rest of choices(from, count - 1, index + 1)) yield [index, ...rest];
  }
}
