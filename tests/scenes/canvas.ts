/** Linear light being painted: three floats a pixel, and how far away each pixel's surface is (metres). */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly rgb: Float32Array;
  readonly depth: Float32Array;
}

/** Rows top <= y < bottom, columns left <= x < right. */
export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function makeCanvas(width: number, height: number): Canvas {
  return {
    width,
    height,
    rgb: new Float32Array(width * height * 3),
    depth: new Float32Array(width * height).fill(Infinity),
  };
}

export const wholeOf = (size: { readonly width: number; readonly height: number }): Rectangle => ({
  left: 0,
  top: 0,
  right: size.width,
  bottom: size.height,
});

/** The rectangle grown by `margin`, moved out to multiples of `step`, and kept inside the picture. */
export function growRectangle(
  rectangle: Rectangle,
  margin: number,
  step: number,
  size: { readonly width: number; readonly height: number },
): Rectangle {
  return {
    left: Math.max(0, Math.floor((rectangle.left - margin) / step) * step),
    top: Math.max(0, Math.floor((rectangle.top - margin) / step) * step),
    right: Math.min(size.width, Math.ceil((rectangle.right + margin) / step) * step),
    bottom: Math.min(size.height, Math.ceil((rectangle.bottom + margin) / step) * step),
  };
}

/** Lays the colour over the pixel with the given cover, 0 to 1. */
export function blend(canvas: Canvas, pixel: number, r: number, g: number, b: number, cover: number): void {
  const { rgb } = canvas;
  const at = pixel * 3;
  const stays = 1 - cover;
  rgb[at] = (rgb[at] ?? 0) * stays + r * cover;
  rgb[at + 1] = (rgb[at + 1] ?? 0) * stays + g * cover;
  rgb[at + 2] = (rgb[at + 2] ?? 0) * stays + b * cover;
}
