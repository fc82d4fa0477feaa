/** How far the picture has moved over what stands in it since the first one, right and down: picture pixels. */
export interface Turned {
  readonly x: number;
  readonly y: number;
}

/** What stood in the picture over the last while: an exponential mean of working pictures, and of where the hands were meanwhile. */
export interface SlowBackground {
  width: number;
  height: number;
  /** The mean, where the camera looked when it began; and the same in whole quarters of a grey level. */
  values: Float32Array;
  rounded: Int16Array;
  /** The mean as the picture of now should show it, within `left` to `right` and `top` to `bottom` (the last ones excluded): elsewhere it never saw. */
  aligned: Int16Array;
  shifted: Int16Array;
  left: number;
  top: number;
  right: number;
  bottom: number;
  swayX: number;
  swayY: number;
  /** What the camera had turned by when the mean last began anew, picture pixels. */
  turnedX: number;
  turnedY: number;
  /** Picture pixels to a working pixel. */
  factor: number;
  /** Mean place of the hands, picture pixels without the sway. */
  handsX: number;
  handsY: number;
  /** Pictures taken in, so that the mean is a plain one to begin with. */
  count: number;
}
