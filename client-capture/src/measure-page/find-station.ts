import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { MeasureClient } from "../measuring/measure-client.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { gatherPictures } from "../setup/gather-pictures.ts";
import { focalHint } from "../station/focal-hint.ts";

/** Milliseconds between two pictures of the empty place, as of a camera at 30 a second. */
const between = 1000 / 30;

/**
 * The camera as the sticks give it, found by themselves in what keeps still over the pictures that the phone's page gathers before the golfer steps onto them.
 * @throws Error with a sentence where there is no station in them.
 */
export async function findStation(
  takePicture: () => Promise<ImageBitmap>,
  info: SourceInfo,
  measure: MeasureClient,
  settings: StationSettings,
): Promise<Configuration> {
  measure.start({ settings, camera: null, calibration: "uncalibrated" }, "show");
  const gathering = gatherPictures(
    "clip",
    (first) => measure.keep(first),
    () => undefined,
  );
  for (let t = 0, enough = false; !enough; t += between) {
    await measure.measure(await takePicture(), 0, t);
    enough = await gathering.onPicture(t);
  }
  await measure.freeze();
  const station = await measure.findSticks(settings, { focal: focalHint(info) });
  if (!station.found) throw new Error(`The sticks were not found on the empty place: ${station.reason}.`);
  const { camera, covariance } = station.solution;
  return { settings, camera, calibration: "station", spread: spreadCamera(camera, covariance) };
}
