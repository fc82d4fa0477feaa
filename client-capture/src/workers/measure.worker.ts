/// <reference lib="webworker" />
import { milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import { finishClip } from "../pipeline/finish-clip.ts";
import { startStep, step, type StepOutput, type StepState } from "../pipeline/step.ts";
import type { FromMeasureWorker, ToMeasureWorker } from "./measure-messages.ts";
import { PictureReader } from "./picture-reader.ts";

declare const self: DedicatedWorkerGlobalScope;

const reader = new PictureReader();
let state: StepState | null = null;
let body: Body | null = null;
let kept: StepOutput[] | null = null;

const tell = (message: FromMeasureWorker): void => {
  self.postMessage(message);
};

self.onmessage = ({ data }: MessageEvent<ToMeasureWorker>) => {
  switch (data.do) {
    case "start":
      state = startStep(data.configuration);
      kept = data.keepForClip ? [] : null;
      body = null;
      return;
    case "body":
      body = data.body;
      return;
    case "measure":
      void measure(data);
      return;
    case "finish":
      tell({ told: "finished", id: data.id, answer: finishClip(kept ?? []) });
      return;
  }
};

async function measure({ id, image, rotation, t }: Extract<ToMeasureWorker, { do: "measure" }>): Promise<void> {
  try {
    if (state === null) throw new Error("Nothing was started.");
    const before = performance.now();
    const picture = await reader.read(image, rotation);
    const stepped = step(state, { picture, t: milliseconds(t), body });
    state = stepped.state;
    kept?.push(stepped.output);
    tell({ told: "measured", id, output: stepped.output, tookMs: performance.now() - before });
  } catch (error) {
    tell({ told: "failed", id, why: error instanceof Error ? error.message : String(error) });
  } finally {
    image.close();
  }
}
