import type { CapturedFrame, FrameSource } from "../frames/frame-source.ts";
import type { Measured, MeasureClient } from "../measuring/measure-client.ts";
import type { Body } from "../pipeline/body.ts";
import type { PoseClient } from "../pose/pose-client.ts";
import { adaptRest, type RestTuning } from "./adapt-rest.ts";
import type { SourceClock } from "./source-clock.ts";

export interface RunHooks {
  /** Sees each picture before it is measured; must not keep it. */
  readonly onPicture: (frame: CapturedFrame) => void;
  readonly onMeasured: (measured: Measured, frame: Pick<CapturedFrame, "captureTime" | "index">) => void;
  readonly onPose: (body: Body | null) => void;
  readonly onFailed: (why: string) => void;
}

export interface RunParts {
  readonly source: FrameSource;
  readonly clock: SourceClock;
  /** Null while the model warms up. */
  readonly pose: () => PoseClient | null;
  readonly measure: MeasureClient;
  readonly hooks: RunHooks;
  readonly now: () => number;
  readonly wait: (milliseconds: number) => Promise<void>;
  readonly stopped: () => boolean;
  /** While true no picture is asked for. */
  readonly paused: () => boolean;
}

/**
 * A live source that is behind is not made to wait for the pose model too, but for so long at most, milliseconds: hands are not carried
 * on for longer.
 */
const longestWithoutPose = 120;
/** Of the pose model: up to as long as it takes itself. */
const poseRest: RestTuning = { longest: 60, longer: 15, shorter: 2 };
/** How often a paused run looks whether it goes on, milliseconds. */
const pauseStep = 100;

/**
 * Pulls pictures until the source ends or the run is stopped. One picture is being measured at a time; the pose model gets a copy whenever
 * it is free and the pictures do not pile up. A picture that fails is told and counted, and the next one is asked for.
 * @throws Error with a sentence for the golfer where the source itself breaks.
 */
export async function runSource({
  source,
  clock,
  pose,
  measure,
  hooks,
  now,
  wait,
  stopped,
  paused,
}: RunParts): Promise<void> {
  let posing = false;
  const rest = adaptRest(poseRest);
  let posedAt = Number.NEGATIVE_INFINITY;

  const offerToPose = async ({ image, rotation, captureTime }: CapturedFrame): Promise<void> => {
    const model = pose();
    if (posing || model === null || !rest.isOver(now())) return;
    const behind = (source.live?.waiting() ?? 0) > 0;
    if (behind && captureTime - posedAt < longestWithoutPose) return;
    posing = true;
    posedAt = captureTime;
    try {
      const copy = "displayWidth" in image ? image.clone() : await createImageBitmap(image);
      void model
        .find(copy, rotation, captureTime)
        .then(({ body }) => {
          measure.tellBody(body);
          hooks.onPose(body);
        }, fail)
        .finally(() => {
          rest.worked(now(), source.live?.missed() ?? 0);
          posing = false;
        });
    } catch (error) {
      posing = false;
      fail(error);
    }
  };
  const fail = (error: unknown): void => {
    hooks.onFailed(error instanceof Error ? error.message : String(error));
  };

  const next = async (): Promise<CapturedFrame | null> => {
    while (paused() && !stopped()) await wait(pauseStep);
    return await source.next();
  };

  for (let frame = await next(); frame !== null; frame = await next()) {
    if (stopped()) {
      frame.image.close();
      return;
    }
    try {
      const early = clock.waitFor(frame.captureTime, now());
      if (early > 0) await wait(early);
      hooks.onPicture(frame);
      await offerToPose(frame);
    } catch (error) {
      fail(error);
    }
    try {
      hooks.onMeasured(await measure.measure(frame.image, frame.rotation, frame.captureTime), frame);
    } catch (error) {
      // The worker has closed the picture, unless it never got it.
      closeQuietly(frame);
      fail(error);
    }
  }
}

function closeQuietly({ image }: CapturedFrame): void {
  try {
    image.close();
  } catch {
    // Handed over already.
  }
}
