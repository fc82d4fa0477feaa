import type { FrameSource } from "../frames/frame-source.ts";
import type { MeasureClient } from "../measuring/measure-client.ts";
import type { ClipAnswer } from "../pipeline/finish-clip.ts";
import type { PoseClient } from "../pose/pose-client.ts";
import type { Body } from "../pipeline/body.ts";
import type { PosePace } from "./job.ts";
import { RepeatFinder } from "./repeat-finder.ts";

/** What became of a frame: its time, and its place in the answer (null where it could not be measured); one that repeats the frame before it shares that one's. */
export interface ClipFrame {
  readonly t: number;
  readonly measured: number | null;
}

export interface MeasuredClip {
  readonly frames: readonly ClipFrame[];
  readonly answer: ClipAnswer;
  readonly failures: readonly string[];
  readonly millisecondsPerPose: number;
  readonly millisecondsPerShaft: number;
}

/**
 * Every frame of a clip through the measuring stages, and through the pose model at its pace. The pose of the next frame is found while the
 * shaft of this one is searched, each in its worker. A frame that fails is counted and the clip goes on; one that repeats the frame before it is not
 * measured, nor shown to a model that sees every frame, whose landmarks trail behind where they are looked for twice in one place.
 */
export async function measureClip(
  source: FrameSource,
  pose: PoseClient,
  measure: MeasureClient,
  onFrame: (done: number) => void,
  poses: PosePace,
): Promise<MeasuredClip> {
  const frames: ClipFrame[] = [];
  const failures: string[] = [];
  let posing = 0;
  let searching = 0;
  let measured = 0;
  let seen = 0;
  /** What the model has answered and nobody has been told yet, oldest first. */
  const answers: { readonly from: number; readonly body: Body | null }[] = [];
  let body: Body | null = null;
  let underWay: Promise<void> = Promise.resolve();
  // A camera never shows a picture twice, nor does a demo show; where they look alike the golfer stands still.
  const repeatFinder = source.info.kind === "clip" ? new RepeatFinder() : null;

  for (let frame = await source.next(); frame !== null; frame = await source.next()) {
    const { image, rotation, captureTime, index } = frame;
    const repeats = repeatFinder !== null && (await repeatFinder.repeats(frame));
    // A model that is asked now and then, as a phone's is, is asked in its turn whatever there is to see.
    if (poses.every === 1 ? !repeats : seen % poses.every === 0) {
      try {
        const copy = "displayWidth" in image ? image.clone() : await createImageBitmap(image);
        const answer = await pose.find(copy, rotation, captureTime);
        answers.push({ from: seen + poses.late, body: answer.body });
        posing += answer.tookMs;
      } catch (error) {
        failures.push(`frame ${String(index)}: pose: ${whyOf(error)}`);
      }
    }
    while (answers[0] !== undefined && answers[0].from <= seen) body = answers.shift()?.body ?? null;
    seen++;
    await underWay;
    if (repeats && measured > 0) {
      image.close();
      frames.push({ t: captureTime, measured: measured - 1 });
      onFrame(frames.length);
      continue;
    }
    measure.tellBody(body);
    underWay = measure.measure(image, rotation, captureTime).then(
      ({ tookMs }) => {
        searching += tookMs;
        frames.push({ t: captureTime, measured: measured++ });
        onFrame(frames.length);
      },
      (error: unknown) => {
        failures.push(`frame ${String(index)}: ${whyOf(error)}`);
        frames.push({ t: captureTime, measured: null });
      },
    );
  }
  await underWay;
  const count = Math.max(1, frames.length);
  return {
    frames,
    answer: await measure.finish(),
    failures,
    millisecondsPerPose: posing / count,
    millisecondsPerShaft: searching / count,
  };
}

const whyOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
