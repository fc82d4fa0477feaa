import type { StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { StickEnd, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { groundLength, otherEnd } from "./ground-length.ts";
import { snapStick } from "./snap-stick.ts";
import { stationTuning } from "./station-tuning.ts";

type Solved = Exclude<StationSolution, { verdict: "refused" }>;

export interface Judged {
  readonly sticks: readonly StickInImage[];
  readonly solution: Solved;
  /** Higher: more of what the camera says is seen in the picture. */
  readonly score: number;
}

/** Beyond this a stick stands out no better for the choice, sds. */
const mostContrast = 8;

/**
 * Whether the picture bears out what a camera says of the sticks it was solved from: each is followed anew over the whole length that it should
 * have, and the camera solved again from that, twice. Null where a stick is seen on too little of its length, goes on beyond it, or no camera fits.
 */
export function judgeSticks(
  picture: Picture,
  found: readonly StickInImage[],
  solve: (sticks: readonly StickInImage[]) => StationSolution,
  settings: StationSettings,
): Judged | null {
  let sticks = found;
  let solution = solve(sticks);
  let seen = 0;
  for (let round = 0; round < 2; round++) {
    if (solution.verdict === "refused") return null;
    const { camera } = solution;
    seen = 0;
    const next: StickInImage[] = [];
    for (const stick of sticks) {
      const { near, far } = wholeStick(stick, camera, settings.stickLength);
      const snapped = snapStick(picture, stick.line, near, far, stationTuning.checkReach, stationTuning.checkEndReach);
      if (!snapped.ok || snapped.runsOn || snapped.seenShare < stationTuning.leastSeenShare) return null;
      seen += snapped.seenShare * Math.min(snapped.contrast, mostContrast);
      const { contrast } = snapped;
      next.push({
        line: stick.line,
        near: loosened(snapped.stick.near, contrast),
        far: loosened(snapped.stick.far, contrast),
      });
    }
    sticks = next;
    solution = solve(sticks);
  }
  if (solution.verdict === "refused") return null;
  const { camera, misfit } = solution;
  if (misfit > stationTuning.greatestFoundMisfit * sticks.length) return null;
  const longest = stationTuning.longestShare * settings.stickLength;
  // A line without an end could be anything: a shaft, a shadow, the edge of a mat.
  const isStick = ({ near, far }: StickInImage): boolean =>
    (near.isEnd || far.isEnd) && groundLength(camera, near.at, far.at) <= longest;
  if (!sticks.every(isStick)) return null;
  const ends = sticks.reduce((sum, { near, far }) => sum + Number(near.isEnd) + Number(far.isEnd), 0);
  return { sticks, solution, score: seen + ends - misfit / 2 };
}

/** A stick drawn out to its length where only one of its ends was seen. */
function wholeStick(
  { near, far }: StickInImage,
  camera: Solved["camera"],
  length: number,
): { readonly near: StickEnd["at"]; readonly far: StickEnd["at"] } {
  if (near.isEnd && !far.isEnd) return { near: near.at, far: otherEnd(camera, near.at, far.at, length) ?? far.at };
  if (far.isEnd && !near.isEnd) return { near: otherEnd(camera, far.at, near.at, length) ?? near.at, far: far.at };
  return { near: near.at, far: far.at };
}

/** Nobody confirmed these marks: each is trusted no better than a thumb's, and less where the stick hardly stands out. */
function loosened(end: StickEnd, contrast: number): StickEnd {
  const { foundAcrossSd, foundAlongSd, dullAcrossSd, dullAlongSd } = stationTuning;
  return {
    ...end,
    acrossSd: pixels(Math.max(end.acrossSd, foundAcrossSd, dullAcrossSd / contrast)),
    alongSd: pixels(Math.max(end.alongSd, foundAlongSd, dullAlongSd / contrast)),
  };
}
