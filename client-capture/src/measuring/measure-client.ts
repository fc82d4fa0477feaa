import type { Body } from "../pipeline/body.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import type { ClipAnswer } from "../pipeline/finish-clip.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { FromMeasureWorker, ToMeasureWorker } from "../workers/measure-messages.ts";

export interface Measured {
  readonly output: StepOutput;
  readonly rep: RepReading | null;
  readonly tookMs: number;
}

/** The measuring stages in a worker of their own. */
export interface MeasureClient {
  start(configuration: Configuration, keepForClip: boolean): void;
  tellBody(body: Body | null): void;
  /** Takes `image` over. Rejects where this picture could not be measured; the next one may be given all the same. */
  measure(image: VideoFrame | ImageBitmap, rotation: 0 | 90 | 180 | 270, t: number): Promise<Measured>;
  finish(): Promise<ClipAnswer>;
  close(): void;
}

type Waiting = { readonly reject: (error: Error) => void } & (
  | { readonly for: "measured"; readonly resolve: (answer: Measured) => void }
  | { readonly for: "finished"; readonly resolve: (answer: ClipAnswer) => void }
);

export function startMeasureClient(): MeasureClient {
  const worker = new Worker(new URL("../workers/measure.worker.ts", import.meta.url), {
    type: "module",
    name: "measure",
  });
  const waiting = new Map<number, Waiting>();
  let nextId = 0;
  const post = (message: ToMeasureWorker, transfer: Transferable[] = []): void => {
    worker.postMessage(message, transfer);
  };
  const failAll = (why: string): void => {
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  };
  worker.onerror = (event) => {
    failAll(event.message);
  };
  worker.onmessage = ({ data }: MessageEvent<FromMeasureWorker>) => {
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (asked === undefined) return;
    if (data.told === "failed") asked.reject(new Error(data.why));
    else if (data.told === "measured" && asked.for === "measured") asked.resolve(data);
    else if (data.told === "finished" && asked.for === "finished") asked.resolve(data.answer);
  };
  return {
    start(configuration, keepForClip) {
      post({ do: "start", configuration, keepForClip });
    },
    tellBody(body) {
      post({ do: "body", body });
    },
    measure: (image, rotation, t) =>
      new Promise((resolve, reject) => {
        const id = nextId++;
        waiting.set(id, { for: "measured", resolve, reject });
        post({ do: "measure", id, image, rotation, t }, [image]);
      }),
    finish: () =>
      new Promise((resolve, reject) => {
        const id = nextId++;
        waiting.set(id, { for: "finished", resolve, reject });
        post({ do: "finish", id });
      }),
    close() {
      worker.terminate();
      failAll("Measuring was stopped.");
    },
  };
}
