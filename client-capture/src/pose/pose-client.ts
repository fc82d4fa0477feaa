import type { Body } from "../pipeline/body.ts";
import type { FromPoseWorker, PoseDelegate, PoseModel, ToPoseWorker } from "../workers/pose-messages.ts";

export interface PoseAnswer {
  readonly body: Body | null;
  readonly tookMs: number;
}

/** One running pose model in a worker of its own. */
export interface PoseClient {
  readonly model: PoseModel;
  readonly delegate: PoseDelegate;
  /** Milliseconds per picture as timed in the warm-up; null where it was not timed. */
  readonly perFrameMs: number | null;
  /** Takes `image` over. Rejects where the model fails on this picture; the next one may be given all the same. */
  find(image: VideoFrame | ImageBitmap, rotation: 0 | 90 | 180 | 270, t: number): Promise<PoseAnswer>;
  close(): void;
}

export interface PoseRequest {
  readonly model: PoseModel;
  readonly delegate: PoseDelegate;
  readonly warmUp: boolean;
  /** Given up after this long, milliseconds. */
  readonly patience: number;
}

/** @throws Error with a sentence where the model does not start in this browser, or not in time. */
export async function startPoseClient(request: PoseRequest): Promise<PoseClient> {
  const worker = new Worker(new URL("../workers/pose.worker.ts", import.meta.url), { type: "module", name: "pose" });
  const post = (message: ToPoseWorker, transfer: Transferable[] = []): void => {
    worker.postMessage(message, transfer);
  };
  const waiting = new Map<number, { resolve: (answer: PoseAnswer) => void; reject: (error: Error) => void }>();
  const failAll = (why: string): void => {
    for (const { reject } of waiting.values()) reject(new Error(why));
    waiting.clear();
  };
  let nextId = 0;

  const perFrameMs = await new Promise<number | null>((resolve, reject) => {
    const giveUp = (why: string): void => {
      worker.terminate();
      reject(new Error(`The pose model (${request.delegate}) did not start: ${why}`));
    };
    const timer = setTimeout(() => {
      giveUp("it took too long.");
    }, request.patience);
    worker.onerror = (event) => {
      clearTimeout(timer);
      failAll(event.message);
      giveUp(event.message);
    };
    worker.onmessage = ({ data }: MessageEvent<FromPoseWorker>) => {
      switch (data.told) {
        case "started":
          clearTimeout(timer);
          resolve(data.perFrameMs);
          return;
        case "refused":
          clearTimeout(timer);
          giveUp(data.why);
          return;
        case "body":
          waiting.get(data.id)?.resolve({ body: data.body, tookMs: data.tookMs });
          waiting.delete(data.id);
          return;
        case "failed":
          waiting.get(data.id)?.reject(new Error(data.why));
          waiting.delete(data.id);
          return;
      }
    };
    post({
      do: "start",
      folder: new URL(`${import.meta.env.BASE_URL}pose/`, location.href).href,
      model: request.model,
      delegate: request.delegate,
      warmUp: request.warmUp,
    });
  });

  return {
    model: request.model,
    delegate: request.delegate,
    perFrameMs,
    find: (image, rotation, t) =>
      new Promise((resolve, reject) => {
        const id = nextId++;
        waiting.set(id, { resolve, reject });
        post({ do: "find", id, image, rotation, t }, [image]);
      }),
    close() {
      worker.terminate();
      failAll("The pose model was stopped.");
    },
  };
}
