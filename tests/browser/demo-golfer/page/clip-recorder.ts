import { BufferTarget, CanvasSource, getFirstEncodableVideoCodec, Mp4OutputFormat, Output, Quality } from "mediabunny";

export interface ClipRecorder {
  readonly codec: string;
  /** `at`: seconds from the clip's beginning. */
  add(picture: VideoFrame | ImageBitmap, at: number): Promise<void>;
  finish(): Promise<ArrayBuffer>;
}

/** Codes pictures of `first`'s size into an MP4: H.264 where the browser codes it, as phones do, else VP9. */
export async function clipRecorder(first: VideoFrame | ImageBitmap): Promise<ClipRecorder> {
  const width = "displayWidth" in first ? first.displayWidth : first.width;
  const height = "displayHeight" in first ? first.displayHeight : first.height;
  const codec = await getFirstEncodableVideoCodec(["avc", "vp9"], { width, height });
  if (codec === null) throw new Error("this browser codes neither H.264 nor VP9");
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("no 2D canvas");
  const target = new BufferTarget();
  const output = new Output({ format: new Mp4OutputFormat(), target });
  const track = new CanvasSource(canvas, { codec, quality: new Quality("high") });
  output.addVideoTrack(track);
  await output.start();
  return {
    codec,
    async add(picture, at) {
      context.drawImage(picture, 0, 0);
      await track.add(at);
    },
    async finish() {
      await output.finalize();
      if (target.buffer === null) throw new Error("the clip came out empty");
      return target.buffer;
    },
  };
}
