/** A bar with round ends, from one point to another; units of a square with side 1, y down. */
export interface Bar {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly width: number;
  readonly colour: string;
}

export interface Dot {
  readonly at: readonly [x: number, y: number];
  readonly radius: number;
  readonly colour: string;
}

export const ground = "#10201a";
const stick = "#f6f3ea";

/**
 * The project's own mark: ball line, toe line and heel line as the golfer looks down on them, and where the club points. The ground screen has it on
 * white. Everything lies within the middle four fifths, which stay visible whatever shape a phone cuts its icons to (W3C maskable icons).
 */
export const bars: readonly Bar[] = [
  { from: [0.22, 0.36], to: [0.78, 0.36], width: 0.07, colour: stick },
  { from: [0.22, 0.575], to: [0.78, 0.575], width: 0.07, colour: stick },
  { from: [0.22, 0.72], to: [0.78, 0.72], width: 0.07, colour: stick },
];

export const dots: readonly Dot[] = [
  { at: [0.5, 0.36], radius: 0.17, colour: ground },
  { at: [0.5, 0.36], radius: 0.13, colour: "#d55e00" },
];
