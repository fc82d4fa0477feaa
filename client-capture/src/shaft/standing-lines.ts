/**
 * What was seen in each direction where it stood when it was first seen there: the run's outer end and the hands, in working pixels without the
 * sway. NaN where nothing was.
 */
export interface StandingLines {
  readonly endX: Float32Array;
  readonly endY: Float32Array;
  readonly handsX: Float32Array;
  readonly handsY: Float32Array;
}

export const noStandingLines = (directions: number): StandingLines => ({
  endX: new Float32Array(directions).fill(Number.NaN),
  endY: new Float32Array(directions).fill(Number.NaN),
  handsX: new Float32Array(directions).fill(Number.NaN),
  handsY: new Float32Array(directions).fill(Number.NaN),
});
