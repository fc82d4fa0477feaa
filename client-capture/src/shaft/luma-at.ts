import type { Picture } from "../picture/picture.ts";

/** Brightness between four pixels (bilinear), pixels' middles lying at halves; the picture's border goes on outside of it. */
export function lumaAt(picture: Picture, x: number, y: number): number {
  const { width, height } = picture;
  const inX = Math.max(0.5, Math.min(width - 0.501, x));
  const inY = Math.max(0.5, Math.min(height - 0.501, y));
  return lumaInside(picture, inX, inY);
}

/** The same where all four pixels are known to lie inside. */
export function lumaInside({ luma, width }: Picture, x: number, y: number): number {
  const ix = (x - 0.5) | 0;
  const iy = (y - 0.5) | 0;
  const dx = x - 0.5 - ix;
  const dy = y - 0.5 - iy;
  const at = iy * width + ix;
  const top = (luma[at] as number) * (1 - dx) + (luma[at + 1] as number) * dx;
  const bottom = (luma[at + width] as number) * (1 - dx) + (luma[at + width + 1] as number) * dx;
  return top * (1 - dy) + bottom * dy;
}
