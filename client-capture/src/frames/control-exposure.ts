import { nextExposure, wantedExposure, type ExposureRange } from "./next-exposure.ts";

/** Constraints of the image-capture extension (W3C MediaStream Image Capture), which the DOM types do not know. */
interface ExposureCapabilities {
  readonly exposureMode?: readonly string[];
  /** In units of 100 microseconds. */
  readonly exposureTime?: { readonly min?: number; readonly max?: number };
}

export interface ExposureControl {
  /** Milliseconds; null where the device does not tell. */
  now(): number | null;
  /** Keeps the exposure as short as the light allows; to be called about once a second with the picture's mean brightness (0 to 255). */
  tend(brightness: number): Promise<void>;
}

/** Milliseconds in the extension's unit. */
const unit = 0.1;

/** Asks for a short exposure where the device lets it be set, so that a moving shaft stays a line. */
export async function controlExposure(track: MediaStreamTrack): Promise<ExposureControl> {
  const range = rangeOf(track);
  let set: number | null = null;
  const apply = async (time: number): Promise<void> => {
    try {
      const wanted = { exposureMode: "manual", exposureTime: time / unit } as MediaTrackConstraintSet;
      await track.applyConstraints({ advanced: [wanted] });
      set = time;
    } catch {
      // A device that says it can and then cannot decides alone.
    }
  };
  if (range !== null) await apply(Math.min(range.most, Math.max(range.least, wantedExposure)));
  return {
    now: () => toldBy(track) ?? set,
    async tend(brightness) {
      if (range === null || set === null) return;
      const next = nextExposure(brightness, set, range);
      if (next !== null) await apply(next);
    },
  };
}

function rangeOf(track: MediaStreamTrack): ExposureRange | null {
  if (!("getCapabilities" in track)) return null;
  const { exposureMode, exposureTime } = track.getCapabilities() as ExposureCapabilities;
  if (exposureTime?.min === undefined || exposureTime.max === undefined) return null;
  if (exposureMode?.includes("manual") !== true) return null;
  return { least: exposureTime.min * unit, most: exposureTime.max * unit };
}

/** Some devices tell their exposure although it cannot be set. */
function toldBy(track: MediaStreamTrack): number | null {
  const { exposureTime } = track.getSettings() as { readonly exposureTime?: number };
  return exposureTime === undefined || !(exposureTime > 0) ? null : exposureTime * unit;
}
