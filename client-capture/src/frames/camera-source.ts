import { milliseconds } from "@overcue/shared-geometry/units";
import type { CapturedFrame, FrameSource, LiveCount, SourceInfo } from "./frame-source.ts";
import { cameraTrouble } from "./camera-trouble.ts";
import { startCaptureClock, type CaptureClock } from "./capture-clock.ts";
import { controlExposure, type ExposureControl } from "./control-exposure.ts";
import { readTrack, type TrackReader } from "./track-reader.ts";

/** What is asked of the camera: an upright picture of the golfer and as many of them as there are. */
const wanted: MediaTrackConstraints = {
  facingMode: { ideal: "environment" },
  width: { ideal: 720 },
  height: { ideal: 1280 },
  frameRate: { ideal: 60, min: 24 },
};

export interface CameraSource extends FrameSource {
  /** It looks away from the screen, as a rear camera does. */
  readonly looksAhead: boolean;
  readonly exposure: ExposureControl;
  readonly hasTorch: boolean;
  setTorch(on: boolean): Promise<void>;
}

/**
 * The rear camera, live. `next` gives pictures in order; the ones that nobody had time for are gone and counted.
 * @throws Error with a sentence for the golfer where there is no camera, no permission or no secure page.
 */
export async function openCamera(): Promise<CameraSource> {
  const media = navigator.mediaDevices as MediaDevices | undefined;
  if (media === undefined) {
    throw new Error("The camera is only given to a secure page: open the https address from the pairing code.");
  }
  let stream: MediaStream;
  try {
    stream = await openStream(media);
  } catch (error) {
    throw new Error(cameraTrouble(error), { cause: error });
  }
  const [track] = stream.getVideoTracks();
  if (track === undefined) throw new Error("The camera gives no picture: close other programs that use it.");
  const exposure = await controlExposure(track);
  const reader = await readTrack(track);
  const settings = track.getSettings();
  const info: SourceInfo = {
    kind: "camera",
    width: reader.width,
    height: reader.height,
    nominalFramesPerSecond: settings.frameRate ?? 30,
    zoom: zoomOf(settings),
    knownCamera: null,
  };
  return new LiveCamera(track, reader, info, exposure);
}

/** Some cameras refuse a least frame rate in the light they have; they are then taken as they come. */
async function openStream(media: MediaDevices): Promise<MediaStream> {
  try {
    return await media.getUserMedia({ audio: false, video: wanted });
  } catch (error) {
    if (!(error instanceof DOMException) || error.name !== "OverconstrainedError") throw error;
    return await media.getUserMedia({ audio: false, video: { facingMode: { ideal: "environment" } } });
  }
}

class LiveCamera implements CameraSource {
  readonly info: SourceInfo;
  readonly exposure: ExposureControl;
  readonly hasTorch: boolean;
  readonly looksAhead: boolean;
  readonly live: LiveCount;
  readonly #track: MediaStreamTrack;
  readonly #reader: TrackReader;
  readonly #clock: CaptureClock;
  #taken = 0;
  #closed = false;

  constructor(track: MediaStreamTrack, reader: TrackReader, info: SourceInfo, exposure: ExposureControl) {
    this.info = info;
    this.exposure = exposure;
    this.looksAhead = track.getSettings().facingMode === "environment";
    this.hasTorch = "torch" in capabilitiesOf(track);
    this.#track = track;
    this.#reader = reader;
    this.live = reader;
    this.#clock = startCaptureClock();
  }

  async next(): Promise<CapturedFrame | null> {
    const taken = await this.#reader.next();
    if (taken === null) {
      if (this.#closed) return null;
      throw new Error("The camera stopped: another program took it or the cable came loose. Choose the camera again.");
    }
    return {
      image: taken.image,
      rotation: 0,
      captureTime: milliseconds(this.#clock(taken.stamp, taken.arrived)),
      index: this.#taken++ + this.#reader.missed(),
      truth: null,
    };
  }

  async setTorch(on: boolean): Promise<void> {
    await this.#track.applyConstraints({ advanced: [{ torch: on } as MediaTrackConstraintSet] });
  }

  close(): void {
    this.#closed = true;
    this.#reader.close();
    this.#track.stop();
  }
}

/** W3C Image Capture; not in the DOM types. */
function zoomOf(settings: MediaTrackSettings & { readonly zoom?: number }): number {
  const { zoom } = settings;
  return zoom !== undefined && Number.isFinite(zoom) && zoom > 0 ? zoom : 1;
}

function capabilitiesOf(track: MediaStreamTrack): object {
  // Firefox has had no getCapabilities for long.
  return "getCapabilities" in track ? track.getCapabilities() : {};
}
