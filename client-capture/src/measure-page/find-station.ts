import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { focalHint } from "../station/focal-hint.ts";
import type { FrameSource } from "../frames/frame-source.ts";
import type { MeasureClient } from "../measuring/measure-client.ts";
import type { Configuration } from "../pipeline/configuration.ts";

/**
 * The camera as the sticks in the source's first picture give it, found by themselves. That picture is used up.
 * @throws Error with a sentence where there is no picture or no station in it.
 */
export async function findStation(
  source: FrameSource,
  measure: MeasureClient,
  settings: StationSettings,
): Promise<Configuration> {
  const frame = await source.next();
  if (frame === null) throw new Error("There is no picture to find the sticks in.");
  measure.start({ settings, camera: null, calibration: "uncalibrated" }, true);
  await measure.measure(frame.image, frame.rotation, frame.captureTime);
  await measure.keep(true);
  await measure.freeze();
  const station = await measure.findSticks(settings, { focal: focalHint(source.info) });
  if (!station.found) throw new Error(`The sticks were not found in the first picture: ${station.reason}.`);
  const { camera, covariance } = station.solution;
  return { settings, camera, calibration: "station", spread: spreadCamera(camera, covariance) };
}
