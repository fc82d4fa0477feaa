import type { Point } from "@overcue/shared-geometry/point";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import type { Body } from "../pipeline/body.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import type { ClipAnswer } from "../pipeline/finish-clip.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { RodColour } from "../shaft/rod-likeness.ts";
import type { Picture } from "../picture/picture.ts";
import type { CameraHints, FoundStation } from "../station/find-sticks.ts";
import type { SnappedStick } from "../station/snap-stick.ts";
import type { StepOutput } from "../pipeline/step.ts";

/** The picture that sticks are looked for in, and its pixels for the screen, four bytes each. */
export interface FrozenPicture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8ClampedArray<ArrayBuffer>;
}

/** `live`: each rep is told as soon as it has been gone over. `clip`: all is kept and gone over at the end, at leisure. `show`: looked at as live pictures are, and kept to be finished with the reps that live ones have. */
export type RunKind = "live" | "clip" | "show";

export type ToMeasureWorker =
  /** Starts anew: everything remembered of earlier pictures is dropped. */
  | { readonly do: "start"; readonly configuration: Configuration; readonly run: RunKind }
  /** The newest answer of the pose model, for the pictures from here on; null: nobody was found. */
  | { readonly do: "body"; readonly body: Body | null }
  | {
      readonly do: "measure";
      readonly id: number;
      /** Transferred; the worker closes it whatever happens. */
      readonly image: VideoFrame | ImageBitmap;
      readonly rotation: 0 | 90 | 180 | 270;
      readonly t: number;
    }
  /** The same as before from here on, seen through another camera or marked otherwise: nothing is dropped. */
  | { readonly do: "reconfigure"; readonly configuration: Configuration }
  /** Gives the newest picture away as a copy. */
  | { readonly do: "lend"; readonly id: number }
  /** Keeps the newest picture; `first`: and forgets those kept before. */
  | { readonly do: "keep"; readonly id: number; readonly first: boolean }
  /** Makes one picture of what stands still in the kept ones, for finding sticks in it. */
  | { readonly do: "freeze"; readonly id: number }
  | {
      readonly do: "find-sticks";
      readonly id: number;
      readonly settings: StationSettings;
      readonly hints: CameraHints;
    }
  | {
      readonly do: "snap-stick";
      readonly id: number;
      readonly line: StationLine;
      readonly near: Point<"image">;
      readonly far: Point<"image">;
    }
  /** Learns the rod's colour from where it was tapped in the newest picture, pixels. */
  | { readonly do: "learn-rod"; readonly id: number; readonly at: Point<"image"> }
  /** The clip is at its end: go over all of it once more, both ways in time. */
  | { readonly do: "finish"; readonly id: number };

export type FromMeasureWorker =
  | {
      readonly told: "measured";
      readonly id: number;
      readonly output: StepOutput;
      /** Whether this picture ended a rep, which is told by itself when it has been gone over once more. */
      readonly endsRep: boolean;
      /** Of the picture on the whole, 0 to 255. */
      readonly brightness: number;
      readonly tookMs: number;
    }
  /** The rep that the picture of this id ended; after that picture's own answer. */
  | { readonly told: "rep"; readonly id: number; readonly rep: RepReading }
  | { readonly told: "finished"; readonly id: number; readonly answer: ClipAnswer }
  /** How many are kept by now. */
  | { readonly told: "kept"; readonly id: number; readonly count: number }
  | { readonly told: "frozen"; readonly id: number; readonly picture: FrozenPicture }
  | { readonly told: "lent"; readonly id: number; readonly picture: Picture }
  | { readonly told: "sticks"; readonly id: number; readonly station: FoundStation }
  | { readonly told: "snapped"; readonly id: number; readonly snapped: SnappedStick }
  /** Null where nothing there has a colour of its own. */
  | { readonly told: "rod"; readonly id: number; readonly colour: RodColour | null }
  | { readonly told: "failed"; readonly id: number; readonly why: string };
