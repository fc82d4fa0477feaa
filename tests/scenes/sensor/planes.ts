/** A picture in the making: brightness at full size and colour at half size, 0-255 as floats. */
export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly luma: Float32Array;
  readonly blue: Float32Array;
  readonly red: Float32Array;
}

export function makePlanes(width: number, height: number): Planes {
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  return {
    width,
    height,
    luma: new Float32Array(width * height),
    blue: new Float32Array(half),
    red: new Float32Array(half),
  };
}
