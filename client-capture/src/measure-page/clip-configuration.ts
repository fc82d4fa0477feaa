import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import { pixels } from "@overcue/shared-geometry/units";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { thumbSd } from "../setup/solve-marks.ts";
import { stationFileSchema } from "../setup/station-file.ts";
import { focalHint } from "../station/focal-hint.ts";

/**
 * What a clip is measured with: the station file's, or a default camera marked uncalibrated.
 * @throws Error with a sentence where the file is no station or its sticks do not give a camera.
 */
export function clipConfiguration(station: unknown, info: SourceInfo): Configuration {
  const { width, height } = info;
  if (station === null) {
    return { settings: defaultStation("7-iron", "right"), camera: null, calibration: "uncalibrated" };
  }
  const read = stationFileSchema.safeParse(station);
  if (!read.success) {
    const issue = read.error.issues[0];
    const where = issue === undefined || issue.path.length === 0 ? "as a whole" : `at ${issue.path.join(".")}`;
    throw new Error(
      `The station file cannot be used: ${where}, ${issue?.message ?? "it is no station"}. docs/station-file.md says what belongs in it.`,
    );
  }
  const { sticks, settings, ball, rollingShutter } = read.data;
  const solution = solveStation({
    sticks,
    settings,
    width: pixels(width),
    height: pixels(height),
    focal: focalHint(info),
    ball: ball === undefined ? null : { at: ball, sd: thumbSd },
  });
  if (solution.verdict === "refused") {
    throw new Error(`The station file gives no camera: ${solution.sentence} ${solution.whatToDo}`);
  }
  return {
    settings,
    camera: solution.camera,
    calibration: "station",
    spread: spreadCamera(solution.camera, solution.covariance),
    ...(rollingShutter === undefined ? {} : { shutter: rollingShutter }),
  };
}
