export type Rotation = 0 | 90 | 180 | 270;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Size of a picture as it would be shown, before any turn. */
export function shownSize(image: VideoFrame | ImageBitmap): Size {
  return "displayWidth" in image
    ? { width: image.displayWidth, height: image.displayHeight }
    : { width: image.width, height: image.height };
}

export function uprightSize(image: VideoFrame | ImageBitmap, rotation: Rotation): Size {
  const { width, height } = shownSize(image);
  return rotation === 90 || rotation === 270 ? { width: height, height: width } : { width, height };
}

/** Draws pictures the right way up on one canvas that is kept from picture to picture. */
export class UprightCanvas {
  readonly #canvas = new OffscreenCanvas(1, 1);
  readonly #context: OffscreenCanvasRenderingContext2D;

  /** `read`: the pixels will be read back, so keep them in ordinary memory. */
  constructor(read: boolean) {
    const context = this.#canvas.getContext("2d", { willReadFrequently: read, alpha: false });
    if (context === null) throw new Error("This browser draws no 2-D canvas in a worker.");
    this.#context = context;
  }

  /** The canvas with the picture, turned clockwise by `rotation` and scaled by `scale`. */
  draw(image: VideoFrame | ImageBitmap, rotation: Rotation, scale = 1): OffscreenCanvas {
    const upright = uprightSize(image, rotation);
    const width = Math.max(1, Math.round(upright.width * scale));
    const height = Math.max(1, Math.round(upright.height * scale));
    if (this.#canvas.width !== width) this.#canvas.width = width;
    if (this.#canvas.height !== height) this.#canvas.height = height;
    const shown = shownSize(image);
    this.#context.setTransform(1, 0, 0, 1, width / 2, height / 2);
    this.#context.rotate((rotation * Math.PI) / 180);
    this.#context.scale(width / upright.width, height / upright.height);
    this.#context.drawImage(image, -shown.width / 2, -shown.height / 2, shown.width, shown.height);
    return this.#canvas;
  }

  /** The pixels of the picture, RGBA, row by row. */
  pixels(image: VideoFrame | ImageBitmap, rotation: Rotation): ImageData {
    const canvas = this.draw(image, rotation);
    return this.#context.getImageData(0, 0, canvas.width, canvas.height);
  }
}
