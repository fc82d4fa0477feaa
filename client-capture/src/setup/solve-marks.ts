import { solveStation, type StationSolution } from "@overcue/shared-geometry/solve-station";
import { pixels } from "@overcue/shared-geometry/units";
import type { CameraHints } from "../station/find-sticks.ts";
import type { MarkedBall, StationState } from "./station-store.ts";

/** How well a thumb under the magnifier places a mark, pixels. */
export const thumbSd = pixels(1.5);

/** The camera that the marks give. Nothing is solved of a guess: it would fit itself and look like a good station. */
export function solveMarks(
  { sticks, settings, picture, ball }: Pick<StationState, "sticks" | "settings" | "picture" | "ball">,
  hints: CameraHints,
): StationSolution | null {
  if (picture === null || sticks.length < 2 || sticks.some(({ placed }) => placed === "guessed")) return null;
  const size = { width: pixels(picture.width), height: pixels(picture.height) };
  const marked = { sticks: sticks.map(({ stick }) => stick), settings, ...size, ...hints, ball: ballHint(ball) };
  const solution = solveStation(marked);
  // Devices turn their pictures and their sensors each in its own way: where the two disagree the sticks are right.
  const tiltIsWrong = solution.verdict === "refused" && solution.reason === "tilt-contradicts";
  return tiltIsWrong ? solveStation({ ...marked, gravity: null }) : solution;
}

/** A marked ball as the solver takes it. */
export function ballHint(ball: MarkedBall | null): NonNullable<CameraHints["ball"]> | null {
  return ball?.placed === "by-hand" ? { at: ball.at, sd: thumbSd } : null;
}
