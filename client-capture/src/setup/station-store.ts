import { createStore, type StoreApi } from "zustand/vanilla";
import type { Point } from "@overcue/shared-geometry/point";
import type { RollingShutter } from "@overcue/shared-geometry/rolling-shutter";
import type { StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import type { StickEndName, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import type { FrozenPicture } from "../workers/measure-messages.ts";

/** What can be dragged: an end of a stick, or the ball. */
export type MarkName = { readonly line: StationLine; readonly end: StickEndName } | "ball";

export interface MarkedStick {
  readonly stick: StickInImage;
  /** On a bar that was found in the picture, where a thumb left it, or only where it might be: a guess is never solved with. */
  readonly placed: "snapped" | "by-hand" | "guessed";
  /** Of a guessed stick, the ends that a thumb has placed meanwhile: it is a guess until both are. */
  readonly movedEnds: readonly StickEndName[];
}

export interface MarkedBall {
  readonly at: Point<"image">;
  readonly placed: "by-hand" | "guessed";
}

export interface PictureWindow {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The set-up of a station over one still picture. */
export interface StationState {
  /** What stood still while pictures were gathered; null until then. */
  readonly picture: FrozenPicture | null;
  readonly settings: StationSettings;
  readonly sticks: readonly MarkedStick[];
  /** Null where the ball is not marked. */
  readonly ball: MarkedBall | null;
  /** How this phone's camera reads its picture, where the user knows. */
  readonly shutter: RollingShutter | null;
  readonly solution: StationSolution | null;
  /** What is going on, or what went wrong, as a sentence; empty where there is nothing to say. */
  readonly note: string;
  /** The part of the picture that is shown large, pixels. */
  readonly window: PictureWindow | null;
  readonly dragged: { readonly mark: MarkName; readonly at: Point<"image"> } | null;
}

export type StationStore = StoreApi<StationState>;

export const createStationStore = (settings: StationSettings): StationStore =>
  createStore<StationState>(() => ({
    picture: null,
    settings,
    sticks: [],
    ball: null,
    shutter: null,
    solution: null,
    note: "",
    window: null,
    dragged: null,
  }));
