/**
 * One upright picture as the measuring stages see it: brightness at full size, colour (where the source has any) at half size.
 *
 * - `luma`: width * height bytes, row-major, 0 black to 255 white (video range is widened where the source says so).
 * - `chroma`: Cb and Cr, each ceil(width / 2) * ceil(height / 2) bytes, 128 = no colour; null for a grey source.
 *
 * The arrays belong to the caller and may be reused for the next picture: a stage keeps nothing of them but what it copies.
 */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly luma: Uint8Array;
  readonly chroma: { readonly blue: Uint8Array; readonly red: Uint8Array } | null;
}
