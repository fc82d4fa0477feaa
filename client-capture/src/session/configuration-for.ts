import { defaultStation } from "@overcue/shared-geometry/default-station";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { readAtOnce } from "@overcue/shared-geometry/rolling-shutter";
import { metres } from "@overcue/shared-geometry/units";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { RodChoice } from "../checks/rod-check.ts";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { Configuration } from "../pipeline/configuration.ts";

/** A camera solved from the sticks, with the station it was solved for. */
export type SolvedStation = Configuration;

interface Known {
  readonly source: SourceInfo;
  readonly demoSettings: StationSettings | null;
  readonly solved: SolvedStation | null;
  readonly practice: Pick<PracticeState, "golfer" | "layout"> | null;
  readonly rod: RodChoice;
}

/** A solved camera belongs to pictures of its size only. */
const fits = ({ camera }: SolvedStation, { width, height }: SourceInfo): boolean =>
  camera !== null && camera.width === width && camera.height === height;

/**
 * What the stages are told about a source: the solved station, else the demo golfer's own camera and station, else the lines and the hand that
 * the relay's practice has, seen through an assumed camera and marked so.
 */
export function configurationFor({ source, demoSettings, solved, practice, rod: choice }: Known): Configuration {
  const rod = choice.is === "known" ? { colour: choice.colour } : null;
  if (solved !== null && fits(solved, source)) {
    // Whatever camera its sticks give, a demonstration counts for nobody.
    return source.kind === "demo" ? { ...solved, rod, calibration: "demo", shutter: readAtOnce } : { ...solved, rod };
  }
  if (source.kind === "demo" && source.knownCamera !== null && demoSettings !== null) {
    return { settings: demoSettings, camera: source.knownCamera, calibration: "demo", rod, shutter: readAtOnce };
  }
  return { settings: settingsFrom(practice), camera: null, calibration: "uncalibrated", rod };
}

function settingsFrom(practice: Known["practice"]): StationSettings {
  if (practice === null) return defaultStation("7-iron", "right");
  const { toeLine, heelLine, tolerance } = practice.layout;
  return {
    ...defaultStation("7-iron", practice.golfer.handed),
    toeLine: metres(toeLine),
    heelLine: metres(heelLine),
    tolerance: metres(tolerance),
  };
}
