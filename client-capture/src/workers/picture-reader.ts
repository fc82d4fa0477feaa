import { pictureFromPlanes, type Plane } from "../picture/picture-from-planes.ts";
import { pictureFromRgba } from "../picture/picture-from-rgba.ts";
import type { Picture } from "../picture/picture.ts";
import { UprightCanvas, type Rotation } from "./upright-canvas.ts";

/**
 * Makes measuring pictures of what a source gives: straight from a video frame's planes where the browser shows them (no conversion, no
 * loss), else through a canvas. Keeps its buffers from frame to frame.
 */
export class PictureReader {
  #buffer = new Uint8Array(0);
  #canvas: UprightCanvas | null = null;

  /** The upright picture. The image stays the caller's to close. @throws Error where the browser refuses the pixels. */
  async read(image: VideoFrame | ImageBitmap, rotation: Rotation): Promise<Picture> {
    if ("format" in image && hasPlanes(image)) return await this.#fromPlanes(image, rotation);
    this.#canvas ??= new UprightCanvas(true);
    const { data, width, height } = this.#canvas.pixels(image, rotation);
    return pictureFromRgba(data, width, height);
  }

  async #fromPlanes(frame: VideoFrame, rotation: Rotation): Promise<Picture> {
    const size = frame.allocationSize();
    if (this.#buffer.length < size) this.#buffer = new Uint8Array(size);
    const bytes = this.#buffer;
    const layout = await frame.copyTo(bytes);
    const plane = (index: number, step: 1 | 2 = 1, skip = 0): Plane => {
      const at = layout[index];
      if (at === undefined) throw new Error(`A ${String(frame.format)} picture came with too few planes.`);
      return { bytes, offset: at.offset + skip, stride: at.stride, step };
    };
    const interleaved = frame.format === "NV12";
    return pictureFromPlanes(
      {
        width: frame.visibleRect?.width ?? frame.codedWidth,
        height: frame.visibleRect?.height ?? frame.codedHeight,
        luma: plane(0),
        blue: interleaved ? plane(1, 2) : plane(1),
        red: interleaved ? plane(1, 2, 1) : plane(2),
        fullRange: frame.colorSpace.fullRange === true,
      },
      rotation,
    );
  }
}

/** Square pixels in a layout that is read here. */
function hasPlanes(frame: VideoFrame): boolean {
  const planar = frame.format === "I420" || frame.format === "I420A" || frame.format === "NV12";
  const visible = frame.visibleRect;
  if (!planar || visible === null) return false;
  const turn = "rotation" in frame && typeof frame.rotation === "number" ? frame.rotation : 0;
  return turn === 0 && frame.displayWidth === visible.width && frame.displayHeight === visible.height;
}
