/// <reference lib="webworker" />
import { milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { finishClip } from "../pipeline/finish-clip.ts";
import { finishLiveRep } from "../pipeline/finish-live-rep.ts";
import { startStep, step, type StepOutput, type StepState } from "../pipeline/step.ts";
import { meanBrightness } from "../picture/mean-brightness.ts";
import type { Picture } from "../picture/picture.ts";
import { rgbaFromPicture } from "../picture/rgba-from-picture.ts";
import { learnRodColour } from "../shaft/learn-rod-colour.ts";
import { findSticks } from "../station/find-sticks.ts";
import { medianPicture } from "../station/median-picture.ts";
import { snapStick } from "../station/snap-stick.ts";
import type { FromMeasureWorker, ToMeasureWorker } from "./measure-messages.ts";
import { PictureReader } from "./picture-reader.ts";

declare const self: DedicatedWorkerGlobalScope;

/** Live pictures are kept this long, milliseconds: a slow rehearsal with two pumps and a look round fits in. */
const liveMemory = milliseconds(25_000);

interface Run {
  configuration: Configuration;
  readonly forClip: boolean;
  state: StepState;
  readonly outputs: StepOutput[];
}

const reader = new PictureReader();
let run: Run | null = null;
let body: Body | null = null;
/** A picture's arrays are made anew for each one, so that keeping it copies nothing. */
let newest: Picture | null = null;
let kept: Picture[] = [];
let frozen: Picture | null = null;

const tell = (message: FromMeasureWorker): void => {
  self.postMessage(message);
};

self.onmessage = ({ data }: MessageEvent<ToMeasureWorker>) => {
  switch (data.do) {
    case "start":
      run = start(data.configuration, data.keepForClip);
      body = null;
      return;
    case "body":
      body = data.body;
      return;
    case "reconfigure":
      reconfigure(data.configuration);
      return;
    case "lend":
      answer(data.id, () => ({ told: "lent", id: data.id, picture: newestPicture() }));
      return;
    case "measure":
      void measure(data);
      return;
    case "finish":
      answer(data.id, () => {
        const { state, outputs, configuration } = startedRun();
        return { told: "finished", id: data.id, answer: finishClip(state, outputs, configuration) };
      });
      return;
    case "keep":
      answer(data.id, () => {
        kept = [...(data.first ? [] : kept), newestPicture()];
        return { told: "kept", id: data.id, count: kept.length };
      });
      return;
    case "freeze":
      answer(data.id, () => {
        frozen = medianPicture(kept);
        kept = [];
        const { width, height } = frozen;
        return { told: "frozen", id: data.id, picture: { width, height, rgba: rgbaFromPicture(frozen) } };
      });
      return;
    case "find-sticks":
      answer(data.id, () => {
        const station = findSticks(frozenPicture(), data.settings, data.hints);
        return { told: "sticks", id: data.id, station };
      });
      return;
    case "snap-stick":
      answer(data.id, () => {
        const snapped = snapStick(frozenPicture(), data.line, data.near, data.far);
        return { told: "snapped", id: data.id, snapped };
      });
      return;
    case "learn-rod":
      answer(data.id, () => ({ told: "rod", id: data.id, colour: learnRodColour(newestPicture(), data.at) }));
      return;
  }
};

function start(configuration: Configuration, forClip: boolean): Run {
  const keepFor = forClip ? milliseconds(Number.POSITIVE_INFINITY) : liveMemory;
  return { configuration, forClip, state: startStep(configuration, keepFor), outputs: [] };
}

async function measure({ id, image, rotation, t }: Extract<ToMeasureWorker, { do: "measure" }>): Promise<void> {
  try {
    const current = startedRun();
    const before = performance.now();
    const picture = await reader.read(image, rotation);
    newest = picture;
    const stepped = step(current.state, { picture, t: milliseconds(t), body });
    current.state = stepped.state;
    remember(current, stepped.output);
    const rep = current.forClip ? null : finishLiveRep(current.state, current.outputs, current.configuration);
    const tookMs = performance.now() - before;
    tell({ told: "measured", id, output: stepped.output, rep, brightness: meanBrightness(picture), tookMs });
  } catch (error) {
    tell({ told: "failed", id, why: whyOf(error) });
  } finally {
    image.close();
  }
}

function remember({ outputs, forClip }: Run, output: StepOutput): void {
  outputs.push(output);
  if (forClip) return;
  while ((outputs[0]?.t ?? output.t) < output.t - liveMemory) outputs.shift();
}

function answer(id: number, make: () => FromMeasureWorker): void {
  try {
    tell(make());
  } catch (error) {
    tell({ told: "failed", id, why: whyOf(error) });
  }
}

function reconfigure(configuration: Configuration): void {
  if (run === null) return;
  run.configuration = configuration;
  run.state = { ...run.state, after: { ...run.state.after, configuration } };
}

function newestPicture(): Picture {
  if (newest === null) throw new Error("No picture has come yet: wait a moment, then try again.");
  return newest;
}

function frozenPicture(): Picture {
  if (frozen === null) throw new Error("No picture was kept.");
  return frozen;
}

function startedRun(): Run {
  if (run === null) throw new Error("Nothing was started.");
  return run;
}

const whyOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));
