/** The columns of a row that a shift leaves inside the picture, the last one excluded; none where `to` <= `from`. */
export interface RowSpan {
  from: number;
  to: number;
}

/**
 * Row `y` of a picture as it is at (x + dx, y + dy), bilinear in 256ths, written to `into` from `at` on, for the columns of `span` only, which is set to those
 * that have a neighbour inside.
 */
export function shiftRow(
  picture: Int16Array,
  width: number,
  height: number,
  y: number,
  dx: number,
  dy: number,
  into: Int16Array,
  at: number,
  span: RowSpan,
): void {
  const ix = Math.floor(dx);
  const iy = Math.floor(dy);
  const fx = Math.round(256 * (dx - ix));
  const fy = Math.round(256 * (dy - iy));
  const down = fy === 0 ? 0 : width;
  const row = y + iy;
  span.from = Math.max(0, -ix);
  span.to = row < 0 || row + (fy === 0 ? 0 : 1) >= height ? 0 : Math.min(width, width - ix - 1);
  const first = row * width + ix;
  if (span.to <= span.from) return;
  const start = first + span.from;
  let left = (picture[start] as number) * (256 - fy) + (picture[start + down] as number) * fy;
  for (let x = span.from; x < span.to; x++) {
    const i = first + x + 1;
    const next = (picture[i] as number) * (256 - fy) + (picture[i + down] as number) * fy;
    into[at + x] = (left * (256 - fx) + next * fx + 32768) >> 16;
    left = next;
  }
}
