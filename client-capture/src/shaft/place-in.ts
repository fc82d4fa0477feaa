interface Grid {
  readonly width: number;
  readonly height: number;
}

/** Where in a row-major grid the pixel lies that is nearest to (x, y); -1 outside of it. */
export function placeIn({ width, height }: Grid, x: number, y: number): number {
  const column = Math.round(x);
  const line = Math.round(y);
  return column >= 0 && line >= 0 && column < width && line < height ? line * width + column : -1;
}
