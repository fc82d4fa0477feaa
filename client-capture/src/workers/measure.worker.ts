/// <reference lib="webworker" />
import { milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { finishClip } from "../pipeline/finish-clip.ts";
import { finishShow } from "../pipeline/finish-show.ts";
import { startStep, step, type StepOutput, type StepState } from "../pipeline/step.ts";
import { meanBrightness } from "../picture/mean-brightness.ts";
import type { Picture } from "../picture/picture.ts";
import { rgbaFromPicture } from "../picture/rgba-from-picture.ts";
import { learnRodColour } from "../shaft/learn-rod-colour.ts";
import { findSticks } from "../station/find-sticks.ts";
import { medianPicture } from "../station/median-picture.ts";
import { snapStick } from "../station/snap-stick.ts";
import { startGoOverClient, type GoOverClient } from "./go-over-client.ts";
import type { FromMeasureWorker, RunKind, ToMeasureWorker } from "./measure-messages.ts";
import { PictureReader } from "./picture-reader.ts";

declare const self: DedicatedWorkerGlobalScope;

/** What each picture showed is kept for as long, milliseconds: all of a clip; of live pictures only the newest, for `goingOver` keeps them. */
const clipMemory = milliseconds(Number.POSITIVE_INFINITY);
const liveMemory = milliseconds(1);

interface Run {
  readonly kind: RunKind;
  configuration: Configuration;
  state: StepState;
  /** Of a clip's pictures so far; null for live ones. */
  readonly outputs: StepOutput[] | null;
}

const reader = new PictureReader();
let run: Run | null = null;
let body: Body | null = null;
/** A picture's arrays are made anew for each one, so that keeping it copies nothing. */
let newest: Picture | null = null;
let kept: Picture[] = [];
let frozen: Picture | null = null;

/** Started with the first live run. */
let goingOver: GoOverClient | null = null;

const tell = (message: FromMeasureWorker): void => {
  self.postMessage(message);
};

self.onmessage = ({ data }: MessageEvent<ToMeasureWorker>) => {
  switch (data.do) {
    case "start":
      run = start(data.configuration, data.run);
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
        const { kind, state, outputs, configuration } = startedRun();
        if (outputs === null) throw new Error("Live pictures have no end to finish.");
        const finish = kind === "show" ? finishShow : finishClip;
        return { told: "finished", id: data.id, answer: finish(state, outputs, configuration) };
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

function start(configuration: Configuration, kind: RunKind): Run {
  if (kind === "live") {
    goingOver ??= startGoOverClient((id, rep) => {
      tell({ told: "rep", id, rep });
    });
    goingOver.start(configuration);
  }
  const state = startStep(
    configuration,
    kind === "live" ? liveMemory : clipMemory,
    kind === "clip" ? "leisure" : "live",
  );
  return { kind, configuration, state, outputs: kind === "live" ? null : [] };
}

async function measure({ id, image, rotation, t }: Extract<ToMeasureWorker, { do: "measure" }>): Promise<void> {
  try {
    const current = startedRun();
    const before = performance.now();
    const picture = await reader.read(image, rotation);
    // A camera has few pictures to lend and gives none while they are out.
    image.close();
    newest = picture;
    const output = nextOutput(current, picture, t);
    const tookMs = performance.now() - before;
    const endsRep = current.outputs === null && output.swing.finished !== null;
    tell({ told: "measured", id, output, endsRep, brightness: meanBrightness(picture), tookMs });
    const evidence = current.state.shaft.evidence.at(-1);
    if (current.outputs === null && evidence !== undefined) goingOver?.keep(id, evidence, output);
  } catch (error) {
    tell({ told: "failed", id, why: whyOf(error) });
  } finally {
    image.close();
  }
}

function nextOutput(current: Run, picture: Picture, t: number): StepOutput {
  const { state, output } = step(current.state, { picture, t: milliseconds(t), body });
  current.state = state;
  current.outputs?.push(output);
  return output;
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
  if (run.outputs === null) goingOver?.reconfigure(configuration);
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
