/** What stood in the picture over the last while: an exponential mean of working pictures, and of where the hands were meanwhile. */
export interface SlowBackground {
  width: number;
  height: number;
  /** The mean, where the camera looked when it began. */
  values: Float32Array;
  /** The mean as the picture of now should show it; NaN where it never saw. The same array as `values` while nothing sways. */
  aligned: Float32Array;
  shifted: Float32Array;
  swayX: number;
  swayY: number;
  /** Mean place of the hands, picture pixels without the sway. */
  handsX: number;
  handsY: number;
  /** Pictures taken in, so that the mean is a plain one to begin with. */
  count: number;
}
