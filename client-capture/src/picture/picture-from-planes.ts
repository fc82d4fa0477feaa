import type { Picture } from "./picture.ts";

/** One plane of a planar or half-planar picture: `step` bytes from sample to sample, `stride` from row to row. */
export interface Plane {
  readonly bytes: Uint8Array;
  readonly offset: number;
  readonly stride: number;
  readonly step: 1 | 2;
}

export interface Planes {
  /** Size as stored, before the turn. */
  readonly width: number;
  readonly height: number;
  readonly luma: Plane;
  /** At half size, rounded up. */
  readonly blue: Plane;
  readonly red: Plane;
  /** True for 0 to 255; false for video range (16 to 235, colour 16 to 240: ITU-R BT.601, section 2.5.3), which is widened. */
  readonly fullRange: boolean;
}

/** The upright picture of 4:2:0 planes, turned clockwise by `rotation`. */
export function pictureFromPlanes(planes: Planes, rotation: 0 | 90 | 180 | 270): Picture {
  const { width, height, fullRange } = planes;
  const halfWidth = Math.ceil(width / 2);
  const halfHeight = Math.ceil(height / 2);
  const sideways = rotation === 90 || rotation === 270;
  const colour = fullRange ? null : wideColour;
  return {
    width: sideways ? height : width,
    height: sideways ? width : height,
    luma: turned(planes.luma, width, height, rotation, fullRange ? null : wideLuma),
    chroma: {
      blue: turned(planes.blue, halfWidth, halfHeight, rotation, colour),
      red: turned(planes.red, halfWidth, halfHeight, rotation, colour),
    },
  };
}

const table = (value: (byte: number) => number): Uint8Array =>
  Uint8Array.from({ length: 256 }, (_, byte) => Math.max(0, Math.min(255, Math.round(value(byte)))));
const wideLuma = table((byte) => ((byte - 16) * 255) / 219);
const wideColour = table((byte) => 128 + ((byte - 128) * 255) / 224);

/** Where the first pixel of the stored plane goes, and how far the next one in its row and the next row lie from it. */
function layOut(
  width: number,
  height: number,
  rotation: 0 | 90 | 180 | 270,
): [first: number, right: number, down: number] {
  switch (rotation) {
    case 0:
      return [0, 1, width];
    case 90:
      return [height - 1, height, -1];
    case 180:
      return [width * height - 1, -1, -width];
    case 270:
      return [(width - 1) * height, -height, 1];
  }
}

function turned(
  { bytes, offset, stride, step }: Plane,
  width: number,
  height: number,
  rotation: 0 | 90 | 180 | 270,
  map: Uint8Array | null,
): Uint8Array {
  const out = new Uint8Array(width * height);
  if (rotation === 0 && step === 1 && map === null) {
    for (let y = 0; y < height; y++) {
      const from = offset + y * stride;
      out.set(bytes.subarray(from, from + width), y * width);
    }
    return out;
  }
  if (rotation === 0 && step === 1 && map !== null) {
    for (let y = 0, to = 0; y < height; y++) {
      const from = offset + y * stride;
      for (let x = 0; x < width; x++, to++) out[to] = map[bytes[from + x] as number] as number;
    }
    return out;
  }
  const [first, right, down] = layOut(width, height, rotation);
  for (let y = 0; y < height; y++) {
    let to = first + y * down;
    let from = offset + y * stride;
    for (let x = 0; x < width; x++, to += right, from += step) {
      const byte = bytes[from] ?? 0;
      out[to] = map === null ? byte : (map[byte] ?? 0);
    }
  }
  return out;
}
