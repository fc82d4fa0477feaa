import type { Point } from "@overcue/shared-geometry/point";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import type { Body } from "../pipeline/body.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import type { ClipAnswer } from "../pipeline/finish-clip.ts";
import type { Picture } from "../picture/picture.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { RodColour } from "../shaft/rod-likeness.ts";
import type { CameraHints, FoundStation } from "../station/find-sticks.ts";
import type { SnappedStick } from "../station/snap-stick.ts";
import type { FromMeasureWorker, FrozenPicture, RunKind, ToMeasureWorker } from "../workers/measure-messages.ts";

export interface Measured {
  readonly output: StepOutput;
  /** The rep that this picture ended, as soon as it has been gone over once more; null where it ended none. */
  readonly rep: Promise<RepReading> | null;
  /** Of the picture on the whole, 0 to 255. */
  readonly brightness: number;
  readonly tookMs: number;
}

/** The measuring stages in a worker of their own. */
export interface MeasureClient {
  start(configuration: Configuration, run: RunKind): void;
  tellBody(body: Body | null): void;
  /** Another camera or mark from the next picture on; what was remembered of earlier ones stays. */
  reconfigure(configuration: Configuration): void;
  /** A copy of the newest picture. */
  lend(): Promise<Picture>;
  /** Takes `image` over. Rejects where this picture could not be measured; the next one may be given all the same. */
  measure(image: VideoFrame | ImageBitmap, rotation: 0 | 90 | 180 | 270, t: number): Promise<Measured>;
  finish(): Promise<ClipAnswer>;
  /** Keeps the newest picture, with those kept since the `first` one; how many that makes. */
  keep(first: boolean): Promise<number>;
  /** Makes one picture of what stands still in the kept ones, for the two below. */
  freeze(): Promise<FrozenPicture>;
  findSticks(settings: StationSettings, hints: CameraHints): Promise<FoundStation>;
  snapStick(line: StationLine, near: Point<"image">, far: Point<"image">): Promise<SnappedStick>;
  /** The rod's colour where the newest picture was tapped; null where nothing there has one. */
  learnRod(at: Point<"image">): Promise<RodColour | null>;
  close(): void;
}

type Answer = Exclude<FromMeasureWorker, { told: "failed" | "rep" }>;
type Told<T extends Answer["told"]> = Extract<Answer, { told: T }>;

interface Waiting<T> {
  readonly resolve: (answer: T) => void;
  readonly reject: (error: Error) => void;
}

export function startMeasureClient(): MeasureClient {
  const worker = new Worker(new URL("../workers/measure.worker.ts", import.meta.url), {
    type: "module",
    name: "measure",
  });
  const waiting = new Map<number, Waiting<Answer>>();
  const waitingReps = new Map<number, Waiting<RepReading>>();
  let nextId = 0;
  const post = (message: ToMeasureWorker, transfer: Transferable[] = []): void => {
    worker.postMessage(message, transfer);
  };
  const failAll = (why: string): void => {
    for (const { reject } of [...waiting.values(), ...waitingReps.values()]) reject(new Error(why));
    waiting.clear();
    waitingReps.clear();
  };
  worker.onerror = (event) => {
    failAll(event.message);
  };
  worker.onmessage = ({ data }: MessageEvent<FromMeasureWorker>) => {
    if (data.told === "rep") {
      waitingReps.get(data.id)?.resolve(data.rep);
      waitingReps.delete(data.id);
      return;
    }
    const asked = waiting.get(data.id);
    waiting.delete(data.id);
    if (data.told === "failed") asked?.reject(new Error(data.why));
    else asked?.resolve(data);
  };
  /** Asks under a new id and waits for the answer of that kind. */
  const ask = async <T extends Answer["told"]>(
    told: T,
    message: (id: number) => ToMeasureWorker,
    transfer: Transferable[] = [],
  ): Promise<Told<T>> => {
    const id = nextId++;
    const answer = await new Promise<Answer>((resolve, reject) => {
      waiting.set(id, { resolve, reject });
      post(message(id), transfer);
    });
    if (answer.told !== told) throw new Error(`The measuring worker answered ${answer.told} where ${told} was asked.`);
    return answer as Told<T>;
  };
  const repOf = (id: number): Promise<RepReading> =>
    new Promise((resolve, reject) => {
      waitingReps.set(id, { resolve, reject });
    });
  return {
    start(configuration, run) {
      post({ do: "start", configuration, run });
    },
    tellBody(body) {
      post({ do: "body", body });
    },
    reconfigure(configuration) {
      post({ do: "reconfigure", configuration });
    },
    lend: async () => (await ask("lent", (id) => ({ do: "lend", id }))).picture,
    async measure(image, rotation, t) {
      const { id, output, endsRep, brightness, tookMs } = await ask(
        "measured",
        (id) => ({ do: "measure", id, image, rotation, t }),
        [image],
      );
      return { output, rep: endsRep ? repOf(id) : null, brightness, tookMs };
    },
    finish: async () => (await ask("finished", (id) => ({ do: "finish", id }))).answer,
    keep: async (first) => (await ask("kept", (id) => ({ do: "keep", id, first }))).count,
    freeze: async () => (await ask("frozen", (id) => ({ do: "freeze", id }))).picture,
    findSticks: async (settings, hints) =>
      (await ask("sticks", (id) => ({ do: "find-sticks", id, settings, hints }))).station,
    snapStick: async (line, near, far) =>
      (await ask("snapped", (id) => ({ do: "snap-stick", id, line, near, far }))).snapped,
    learnRod: async (at) => (await ask("rod", (id) => ({ do: "learn-rod", id, at }))).colour,
    close() {
      worker.terminate();
      failAll("Measuring was stopped.");
    },
  };
}
