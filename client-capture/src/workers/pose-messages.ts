import type { Body } from "../pipeline/body.ts";

export type PoseModel = "full" | "lite";
export type PoseDelegate = "GPU" | "CPU";

/** To the pose worker. One `start` in a worker's life: a second one needs a new worker. */
export type ToPoseWorker =
  | {
      readonly do: "start";
      /** Address of the folder with the models and the WebAssembly runtime, ending in a slash. */
      readonly folder: string;
      readonly model: PoseModel;
      readonly delegate: PoseDelegate;
      /** Whether to time a few pictures of a drawn figure before answering. */
      readonly warmUp: boolean;
    }
  | {
      readonly do: "find";
      readonly id: number;
      /** Transferred; the worker closes it whatever happens. */
      readonly image: VideoFrame | ImageBitmap;
      readonly rotation: 0 | 90 | 180 | 270;
      readonly t: number;
    };

/** From the pose worker: one answer to each message. */
export type FromPoseWorker =
  | { readonly told: "started"; readonly perFrameMs: number | null }
  | { readonly told: "refused"; readonly why: string }
  | { readonly told: "body"; readonly id: number; readonly body: Body | null; readonly tookMs: number }
  | { readonly told: "failed"; readonly id: number; readonly why: string };
