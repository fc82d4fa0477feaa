/// <reference lib="webworker" />
import { FilesetResolver, PoseLandmarker } from "@mediapipe/tasks-vision";
import { bodyFromResult } from "./body-from-result.ts";
import { ModelClock } from "./model-clock.ts";
import type { FromPoseWorker, ToPoseWorker } from "./pose-messages.ts";
import { rendersInSoftware } from "./renders-in-software.ts";
import { UprightCanvas, uprightSize } from "./upright-canvas.ts";
import { drawFigure } from "./warm-up-figure.ts";

declare const self: DedicatedWorkerGlobalScope;

/** The models see 224 and 256 pixels a side; more than this in the whole picture only costs time. */
const greatestHeight = 720;
const warmUpFrames = 4;

let landmarker: PoseLandmarker | null = null;
const clock = new ModelClock();
const canvas = new UprightCanvas(false);

const tell = (message: FromPoseWorker): void => {
  self.postMessage(message);
};
const whyOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

self.onmessage = ({ data }: MessageEvent<ToPoseWorker>) => {
  if (data.do === "start") void start(data);
  else find(data);
};

async function start({ folder, model, delegate, warmUp }: Extract<ToPoseWorker, { do: "start" }>): Promise<void> {
  try {
    if (delegate === "GPU" && rendersInSoftware()) {
      tell({ told: "refused", why: "The graphics are rendered in software." });
      return;
    }
    const files = await FilesetResolver.forVisionTasks(folder.replace(/\/$/, ""), true);
    landmarker = await PoseLandmarker.createFromOptions(files, {
      baseOptions: { modelAssetPath: `${folder}pose-landmarker-${model}.task`, delegate },
      runningMode: "VIDEO",
      numPoses: 1,
    });
    tell({ told: "started", perFrameMs: warmUp ? timeFigure(landmarker) : null });
  } catch (error) {
    tell({ told: "refused", why: whyOf(error) });
  }
}

function find({ id, image, rotation, t }: Extract<ToPoseWorker, { do: "find" }>): void {
  try {
    if (landmarker === null) throw new Error("The pose model has not started.");
    const before = performance.now();
    const { width, height } = uprightSize(image, rotation);
    const scale = Math.min(1, greatestHeight / height);
    // A camera has few pictures to lend and gives none while they are out: its own are copied and given back before the model looks.
    const asItIs = rotation === 0 && scale === 1 && !isLent(image);
    const input = asItIs ? image : canvas.draw(image, rotation, scale);
    if (input !== image) image.close();
    const result = landmarker.detectForVideo(input, clock.at(t));
    tell({ told: "body", id, body: bodyFromResult(result, width, height, t), tookMs: performance.now() - before });
  } catch (error) {
    tell({ told: "failed", id, why: whyOf(error) });
  } finally {
    image.close();
  }
}

const isLent = (image: VideoFrame | ImageBitmap): image is VideoFrame => "displayWidth" in image;

/** Median milliseconds a picture of a drawn person takes, the slow first one left out. */
function timeFigure(model: PoseLandmarker): number {
  const size = 640;
  const picture = new OffscreenCanvas(size, size);
  const context = picture.getContext("2d");
  if (context === null) throw new Error("This browser draws no 2-D canvas in a worker.");
  drawFigure(context, size);
  model.detectForVideo(picture, clock.at(0));
  const times: number[] = [];
  for (let i = 1; i <= warmUpFrames; i++) {
    const before = performance.now();
    model.detectForVideo(picture, clock.at(i));
    times.push(performance.now() - before);
  }
  return times.toSorted((a, b) => a - b)[warmUpFrames >> 1] ?? Number.POSITIVE_INFINITY;
}
