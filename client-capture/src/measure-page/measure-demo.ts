import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoCheckpoint, DemoTruth } from "../demo-motion/demo-truth.ts";
import { DemoGolferSource } from "../frames/demo-golfer/demo-golfer-source.ts";
import { seededRandom } from "../frames/demo-golfer/seeded-random.ts";
import type { CapturedFrame, FrameSource } from "../frames/frame-source.ts";
import type { ClipAnswer } from "../pipeline/finish-clip.ts";
import type { Job } from "./job.ts";

/** A demo show beside what was measured of it. */
export interface DemoAnswer {
  /** One for each picture. */
  readonly truths: readonly (DemoTruth | null)[];
  readonly checkpoints: readonly DemoCheckpoint[];
  readonly measured: ClipAnswer;
  /** What the club was seen through: the virtual camera itself, or the one that the found sticks gave. */
  readonly camera: Camera | null;
}

/** A demo show as a source that ends after one plan and writes down the truth of every picture. */
export function openDemoJob(job: Extract<Job, { kind: "demo" }>): {
  readonly source: FrameSource;
  readonly emptyPlace: () => Promise<ImageBitmap>;
  readonly answer: (measured: ClipAnswer, camera: Camera | null) => DemoAnswer;
} {
  let shown = false;
  const show = new DemoGolferSource({
    camera: job.camera,
    framesPerSecond: job.framesPerSecond,
    pace: null,
    rodColour: job.rodColour,
    random: seededRandom(job.seed),
    nextPlan: () => {
      if (shown) return null;
      shown = true;
      return job.plan;
    },
  });
  const truths: (DemoTruth | null)[] = [];
  return {
    source: {
      info: show.info,
      async next(): Promise<CapturedFrame | null> {
        const frame = await show.next();
        if (frame !== null) truths.push(frame.truth);
        return frame;
      },
      close() {
        show.close();
      },
    },
    emptyPlace: () => show.emptyPlace(),
    answer: (measured, camera) => ({ truths, checkpoints: show.checkpoints, measured, camera }),
  };
}
