import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoTruth } from "../demo-motion/demo-truth.ts";

/** One picture on its way in. Whoever receives it closes `image`, whatever happens. */
export interface CapturedFrame {
  readonly image: VideoFrame | ImageBitmap;
  /** Clockwise turn that makes the picture upright. */
  readonly rotation: 0 | 90 | 180 | 270;
  /** When the picture was taken, on the source's one clock; strictly rising. */
  readonly captureTime: Milliseconds;
  /** 0-based, in presentation order; a live source skips the numbers of pictures nobody took. */
  readonly index: number;
  /** What was really there: the demo golfer only. */
  readonly truth: DemoTruth | null;
}

export interface SourceInfo {
  readonly kind: "camera" | "clip" | "demo";
  /** Size of the upright picture. */
  readonly width: number;
  readonly height: number;
  /** As stated by the source; the true rate comes from the capture times. */
  readonly nominalFramesPerSecond: number;
  /** How many times closer than its usual lens the source looks, as far as it tells; 1 where it does not. */
  readonly zoom: number;
  /** The camera where it is known beforehand: the demo golfer only. */
  readonly knownCamera: Camera | null;
}

export interface LiveCount {
  /** How many pictures have come since the first `next` that `next` never gave. */
  missed(): number;
  /** How many have come that `next` has not given yet; never more than a few. */
  waiting(): number;
}

/**
 * Where pictures come from. Pulled, so that one frame is in flight and a slow reader of a live source gets
 * fresh pictures while a clip loses none.
 */
export interface FrameSource {
  readonly info: SourceInfo;
  /** A live source only: its pictures come whether somebody has time for them or not. */
  readonly live?: LiveCount;
  /** The next picture, or null at the end. @throws Error with a sentence for the golfer where the source breaks. */
  next(): Promise<CapturedFrame | null>;
  close(): void;
}
