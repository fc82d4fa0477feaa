/** Colours by their part on the screen; the theme says which colour plays it. */
export type Paint =
  "paper" | "strip" | "ink" | "quiet" | "felt" | "wanted" | "live" | "good" | "off" | "plotWarm" | "plotCool";

/** Height of a tag, and its room on either side of the text, in font sizes. */
export const tagHeight = 1.02;
export const tagPadding = 0.22;

export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type PatternName = "hatch" | "dots";
export type MarkShape =
  | "live-round"
  | "live-square"
  | "ring"
  | "disc"
  | "diamond"
  | "triangle-up"
  | "triangle-down"
  | "triangle-left"
  | "triangle-right";

interface Common {
  /** 0 invisible to 1 opaque. */
  readonly alpha: number;
}

/** One thing to paint, in CSS pixels of the canvas. Painted in the list's order. */
export type Shape =
  | (Common & { readonly kind: "rect"; readonly rect: Rect; readonly fill: Paint })
  | (Common & {
      readonly kind: "pattern";
      readonly rect: Rect;
      readonly pattern: PatternName;
      readonly paint: Paint;
      readonly scale: number;
    })
  | (Common & {
      readonly kind: "frame";
      readonly rect: Rect;
      readonly paint: Paint;
      readonly width: number;
      readonly dash: readonly number[];
    })
  | (Common & {
      readonly kind: "line";
      readonly from: ScreenPoint;
      readonly to: ScreenPoint;
      readonly paint: Paint;
      readonly width: number;
      readonly dash: readonly number[];
    })
  | (Common & {
      readonly kind: "outline";
      readonly points: readonly ScreenPoint[];
      readonly stroke: Paint;
      readonly fill: Paint | null;
      readonly width: number;
    })
  | (Common & {
      readonly kind: "ellipse";
      readonly centre: ScreenPoint;
      readonly radiusX: number;
      readonly radiusY: number;
      readonly paint: Paint;
    })
  | (Common & {
      readonly kind: "mark";
      readonly shape: MarkShape;
      readonly centre: ScreenPoint;
      readonly size: number;
      readonly paint: Paint;
      readonly halo: Paint;
    })
  | (Common & {
      readonly kind: "tag";
      readonly text: string;
      readonly at: ScreenPoint;
      readonly align: "left" | "right" | "centre";
      readonly size: number;
      readonly ink: Paint;
      readonly ground: Paint;
    });

export type DrawList = readonly Shape[];
