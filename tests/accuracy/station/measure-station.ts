import { Matrix, solve } from "ml-matrix";
import { findSticks } from "@overcue/client-capture/station/find-sticks";
import type { Camera, Matrix3 } from "@overcue/shared-geometry/camera";
import type { CameraCovariance } from "@overcue/shared-geometry/camera-spread";
import { multiply } from "@overcue/shared-geometry/rotation";
import { cameraOff } from "../../scenes/camera-off.ts";
import type { ConditionName } from "../../scenes/conditions.ts";
import { stationScene, type Laid, type Whereabouts } from "./station-scene.ts";

/** What finding the sticks of one picture came to. */
export interface StationMeasure {
  readonly name: ConditionName;
  readonly seed: number;
  readonly where: Whereabouts;
  readonly laid: Laid;
  /** Null where no station was found. */
  readonly found: {
    readonly verdict: "good" | "usable";
    /** Metres and degrees between the solved and the true camera. */
    readonly position: number;
    readonly turned: number;
    /** The whole error (place, turn, focal length) against the stated covariance: squared, chi-square with 7 degrees of freedom where that is true. */
    readonly squaredSds: number;
    readonly buttSd: number;
  } | null;
}

export function measureStation(name: ConditionName, seed: number, where: Whereabouts, laid: Laid): StationMeasure {
  const { picture, camera, settings } = stationScene(name, seed, where, laid);
  const station = findSticks(picture, settings);
  if (!station.found) return { name, seed, where, laid, found: null };
  const { solution } = station;
  const off = cameraOff(solution.camera, camera);
  return {
    name,
    seed,
    where,
    laid,
    found: {
      verdict: solution.verdict,
      position: off.metres,
      turned: off.degrees,
      squaredSds: squaredSds(solution.camera, camera, solution.covariance),
      buttSd: solution.buttSd,
    },
  };
}

/** The true camera as a move of the solved one, squared in the metric of its covariance (Mahalanobis). Small turns. */
function squaredSds(solved: Camera, truth: Camera, covariance: CameraCovariance): number {
  const [r00, r01, r02, r10, r11, r12, r20, r21, r22] = solved.rotation;
  const back: Matrix3 = [r00, r10, r20, r01, r11, r21, r02, r12, r22];
  const turn = multiply(truth.rotation, back);
  const move = Matrix.columnVector([
    truth.position.x - solved.position.x,
    truth.position.y - solved.position.y,
    truth.position.z - solved.position.z,
    (turn[7] - turn[5]) / 2,
    (turn[2] - turn[6]) / 2,
    (turn[3] - turn[1]) / 2,
    Math.log(truth.focal / solved.focal),
  ]);
  return move
    .transpose()
    .mmul(solve(Matrix.from1DArray(7, 7, [...covariance]), move))
    .get(0, 0);
}
