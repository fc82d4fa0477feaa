import type { BandLayout } from "@overcue/shared-geometry/bands";
import type { Handed } from "@overcue/shared-geometry/station";
import { clearOfTags } from "./draw-list/clear-of-tags.ts";
import { drawAimBands, drawAimTags, type AimOnGround } from "./draw-list/draw-aim.ts";
import { drawStation, drawStrips } from "./draw-list/draw-ground.ts";
import { drawMarks } from "./draw-list/draw-marks.ts";
import { drawLive, type LiveOnGround, type PlaceOnGround } from "./draw-list/draw-live.ts";
import type { DrawList } from "./draw-list/shapes.ts";
import { groundFrame, type GroundFrame, type ScreenPlace } from "./draw-list/ground-frame.ts";
import { paint } from "./paint.ts";
import type { Colours, Painter } from "./painter.ts";

/** What the still layer shows; a new object whenever something of it changes. */
export interface GroundScene {
  readonly layout: BandLayout;
  readonly handed: Handed;
  readonly place: ScreenPlace;
  readonly aim: AimOnGround | null;
  /** What the rep under way, or the last one, left on the ground. */
  readonly marks: readonly PlaceOnGround[];
  readonly textSize: number;
  readonly markSize: number;
  readonly colours: Colours;
}

export interface GroundLayers {
  readonly setScene: (scene: GroundScene) => void;
  readonly resize: (width: number, height: number, pixelRatio: number) => void;
  readonly paintLive: (live: LiveOnGround) => void;
}

const fontFamily = '"Barlow Semi Condensed", sans-serif';

/** Two canvases on top of each other: the ground, painted when it changes, and the live layer, painted with each estimate. */
export function groundLayers(still: HTMLCanvasElement, moving: HTMLCanvasElement): GroundLayers {
  let scene: GroundScene | null = null;
  let size = { width: 0, height: 0 };
  let frame: GroundFrame | null = null;
  /** FEEL and WANT as they were painted last, which no moving word may cover. */
  let aimTags: DrawList = [];

  const painterOf = (canvas: HTMLCanvasElement, colours: Colours): Painter | null => {
    const context = canvas.getContext("2d");
    return context === null ? null : { context, colours, fontFamily };
  };
  const paintStill = (): void => {
    frame =
      scene === null || size.width === 0 || size.height === 0
        ? null
        : groundFrame({ x: 0, y: 0, ...size }, scene.layout, scene.handed, scene.place);
    if (scene === null || frame === null) return;
    const painter = painterOf(still, scene.colours);
    if (painter === null) return;
    paint(painter, drawStrips(frame, scene.layout));
    if (scene.aim !== null) paint(painter, drawAimBands(frame, scene.aim, scene.textSize));
    paint(painter, drawStation(frame, scene.layout, Math.max(3, scene.textSize / 10)));
    aimTags = scene.aim === null ? [] : drawAimTags(frame, scene.aim, scene.textSize);
    paint(painter, aimTags);
    const marks = drawMarks(frame, scene.marks, scene.markSize, scene.textSize);
    paint(painter, clearOfTags(marks, aimTags, frame.area));
  };

  return {
    setScene: (next) => {
      scene = next;
      paintStill();
    },
    resize: (width, height, pixelRatio) => {
      size = { width, height };
      for (const canvas of [still, moving]) {
        canvas.width = Math.max(1, Math.round(width * pixelRatio));
        canvas.height = Math.max(1, Math.round(height * pixelRatio));
        canvas.getContext("2d")?.setTransform(pixelRatio, 0, 0, pixelRatio, 0, 0);
      }
      paintStill();
    },
    paintLive: (live) => {
      if (scene === null || frame === null) return;
      const painter = painterOf(moving, scene.colours);
      if (painter === null) return;
      painter.context.clearRect(0, 0, size.width, size.height);
      const shapes = drawLive(frame, live, scene.markSize, scene.textSize);
      paint(painter, clearOfTags(shapes, aimTags, frame.area));
    },
  };
}
