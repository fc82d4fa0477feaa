import type { StickEnd, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { Picture } from "../picture/picture.ts";
import { lineCandidates } from "./line-candidates.ts";
import { ridgeMap } from "./ridge-map.ts";
import { snapStick } from "./snap-stick.ts";
import { stationTuning } from "./station-tuning.ts";

/** A piece grows by about a third at either end a round. */
const growthRounds = 6;

export interface SettledLine {
  readonly stick: StickInImage;
  readonly contrast: number;
}

/** Pieces snapped to their edges and ends, each line once, the plainest first. */
export function settledLines(picture: Picture): SettledLine[] {
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
