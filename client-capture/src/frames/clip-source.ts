import { ALL_FORMATS, BlobSource, Input, VideoSampleSink, type InputVideoTrack, type VideoSample } from "mediabunny";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { CapturedFrame, FrameSource, SourceInfo } from "./frame-source.ts";

/** How many packets are looked at for the stated frame rate. */
const packetsForRate = 60;

/**
 * A recorded clip, every frame of what it shows in presentation order with its own time; nothing is made up. A clip trimmed without
 * coding it anew still carries pictures from before its beginning (ISO/IEC 14496-12, edit list): as in every player they are left out.
 * @throws Error with a sentence for the golfer where the file is no clip that this browser can read.
 */
export async function openClip(file: Blob): Promise<FrameSource> {
  if (file.size === 0) throw new Error("This file is empty: choose a recorded clip.");
  const input = new Input({ source: new BlobSource(file), formats: ALL_FORMATS });
  try {
    const track = await readableTrack(input);
    const stats = await track.computePacketStats(packetsForRate);
    const info: SourceInfo = {
      kind: "clip",
      width: await track.getDisplayWidth(),
      height: await track.getDisplayHeight(),
      nominalFramesPerSecond: stats.averagePacketRate,
      zoom: 1,
      knownCamera: null,
    };
    return new ClipSource(input, new VideoSampleSink(track), info);
  } catch (error) {
    input.dispose();
    throw error;
  }
}

async function readableTrack(input: Input): Promise<InputVideoTrack> {
  let track: InputVideoTrack | null;
  try {
    track = await input.getPrimaryVideoTrack();
  } catch {
    throw new Error("This file is not a video that can be read here: record or export it as MP4, MOV or WebM.");
  }
  if (track === null)
    throw new Error(
      "This file holds no picture track: choose a video, or copy it again where it may have been cut off.",
    );
  const codec = await track.getCodec();
  if (!(await track.canDecode())) {
    const name = codec === "hevc" ? "HEVC (H.265)" : (codec ?? "an unknown codec");
    throw new Error(
      `This clip is coded as ${name}, which this browser does not decode: record or export it as H.264 ("most compatible").`,
    );
  }
  return track;
}

class ClipSource implements FrameSource {
  readonly info: SourceInfo;
  readonly #input: Input;
  readonly #samples: AsyncGenerator<VideoSample, void, unknown>;
  #index = 0;
  #lastTime = Number.NEGATIVE_INFINITY;

  constructor(input: Input, sink: VideoSampleSink, info: SourceInfo) {
    this.info = info;
    this.#input = input;
    this.#samples = sink.samples();
  }

  async next(): Promise<CapturedFrame | null> {
    const sample = await this.#nextSample();
    if (sample === null) return null;
    try {
      // Two frames with one time happen in edited clips; the stages after this one want rising times.
      const time = Math.max(sample.timestamp * 1000, this.#lastTime + 0.001);
      this.#lastTime = time;
      const plain = !sample.flip && sample.pixelAspectRatio.num === sample.pixelAspectRatio.den;
      return {
        image: plain ? sample.toVideoFrame() : drawn(sample),
        rotation: plain ? sample.rotation : 0,
        captureTime: milliseconds(time),
        index: this.#index++,
        truth: null,
      };
    } finally {
      sample.close();
    }
  }

  close(): void {
    void this.#samples.return();
    this.#input.dispose();
  }

  async #nextSample(): Promise<VideoSample | null> {
    try {
      let next = await this.#samples.next();
      while (next.done !== true && next.value.timestamp < 0) {
        next.value.close();
        next = await this.#samples.next();
      }
      if (next.done !== true) return next.value;
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw new Error(`The clip breaks off after ${String(this.#index)} frames: ${why}`, { cause: error });
    }
    if (this.#index === 0)
      throw new Error("This clip holds no frame that can be decoded: it may be cut off or damaged.");
    return null;
  }
}

/** A mirrored picture, or one whose pixels are not square, as it is meant to be seen. */
function drawn(sample: VideoSample): ImageBitmap {
  const canvas = new OffscreenCanvas(sample.displayWidth, sample.displayHeight);
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("This browser draws no 2-D canvas.");
  sample.draw(context, 0, 0);
  return canvas.transferToImageBitmap();
}
