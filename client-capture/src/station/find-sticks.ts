import { solveStation, type StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationInput } from "@overcue/shared-geometry/station-fit";
import { stationLines, type StationLine, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickEnd, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { looksLikeStation } from "./looks-like-station.ts";
import { lineCandidates } from "./line-candidates.ts";
import { ridgeMap } from "./ridge-map.ts";
import { snapStick } from "./snap-stick.ts";
import { stationTuning } from "./station-tuning.ts";

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
  let best: {
    readonly sticks: readonly StickInImage[];
    readonly solution: StationSolution;
    readonly score: number;
  } | null = null;
  for (const chosen of choices(lines.length, wanted.length)) {
    const sticks = nameSticks(
      chosen.map((index) => lines[index]),
      wanted,
      settings,
    );
    if (!sticks || !looksLikeStation(sticks, settings, picture)) continue;
    const solution = solveStation({ sticks, settings, ...size, ...hints });
    if (solution.verdict === "refused") continue;
    const contrast = chosen.reduce((sum, index) => sum + Math.min(lines[index]?.contrast ?? 0, mostContrast), 0);
    const ends = sticks.reduce((sum, { near, far }) => sum + Number(near.isEnd) + Number(far.isEnd), 0);
    const score = contrast + 2 * ends - solution.misfit;
    if (!best || score > best.score) best = { sticks, solution, score };
  }
  return best && best.solution.verdict !== "refused"
    ? { found: true, sticks: best.sticks, solution: best.solution }
    : { found: false, reason: "no-station-among-them" };
}

/** Beyond this a stick stands out no better for the choice, sds. */
const mostContrast = 8;

/** A piece grows by about a third at either end a round. */
const growthRounds = 6;

interface SettledLine {
  readonly stick: StickInImage;
  readonly contrast: number;
}

/** Pieces snapped to their edges and ends, each line once, the plainest first. */
function settledLines(picture: Picture): SettledLine[] {
  const firstRow = Math.floor(picture.height * stationTuning.searchFrom);
  const map = ridgeMap(picture, firstRow, picture.height);
  if (!map) return [];
  const rows = Math.max(16, Math.round(picture.height * stationTuning.pieceShare));
  const settled: SettledLine[] = [];
  for (const { near, far } of lineCandidates(map, rows, stationTuning.mostPieces)) {
    let snapped = snapStick(picture, "ball-line", near, far, 3);
    // The piece was a part of the stick: once more along all that was found, until it grows no longer.
    for (let round = 0; round < growthRounds && snapped.ok; round++) {
      const longer = snapStick(picture, "ball-line", snapped.stick.near.at, snapped.stick.far.at, 2);
      if (!longer.ok) break;
      const grown = !sameLine(longer.stick, snapped.stick);
      snapped = longer;
      if (!grown && round > 0) break;
    }
    if (!snapped.ok) continue;
    const { stick, contrast } = snapped;
    if (!settled.some((other) => sameLine(other.stick, stick))) settled.push({ stick, contrast });
  }
  return settled.toSorted((a, b) => b.contrast - a.contrast).slice(0, stationTuning.mostSticks);
}

function sameLine(a: StickInImage, b: StickInImage): boolean {
  const near = (p: StickEnd, q: StickEnd): boolean => Math.hypot(p.at.x - q.at.x, p.at.y - q.at.y) < 8;
  return near(a.near, b.near) && near(a.far, b.far);
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
  return ordered.map(({ stick }, index) => ({
    line: wanted[index] ?? "ball-line",
    near: loosened(stick.near),
    far: loosened(stick.far),
  }));
}

const loosened = (end: StickEnd): StickEnd => ({
  ...end,
  acrossSd: pixels(Math.max(end.acrossSd, stationTuning.foundAcrossSd)),
  alongSd: pixels(Math.max(end.alongSd, stationTuning.foundAlongSd)),
});

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
