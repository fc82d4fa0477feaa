import type { Rectangle } from "../canvas.ts";

/** ITU-T T.81 (JPEG), Annex K, tables K.1 and K.2: quantisation steps for brightness and colour, row by row. */
const lumaSteps = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56, 14, 17, 22, 29, 51,
  87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113, 92, 49, 64, 78, 87, 103, 121, 120, 101,
  72, 92, 95, 98, 112, 100, 103, 99,
];
const chromaSteps = [
  17, 18, 24, 47, 99, 99, 99, 99, 18, 21, 26, 66, 99, 99, 99, 99, 24, 26, 56, 99, 99, 99, 99, 99, 47, 66, 99, 99, 99,
  99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99, 99,
  99, 99, 99, 99, 99, 99,
];

/** Steps of one table at a quality of 1-100, by the rule of the Independent JPEG Group's library. */
export function quantiserSteps(table: "luma" | "chroma", quality: number): Float32Array {
  const scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const base = table === "luma" ? lumaSteps : chromaSteps;
  return Float32Array.from(base, (step) => Math.min(255, Math.max(1, Math.floor((step * scale + 50) / 100))));
}

/** Rows of the orthonormal 8-point cosine transform. */
const cosines = Float32Array.from({ length: 64 }, (_, index) => {
  const wave = index >> 3;
  const place = index & 7;
  return (wave === 0 ? Math.sqrt(1 / 8) : 0.5) * Math.cos(((2 * place + 1) * wave * Math.PI) / 16);
});

const block = new Float32Array(64);
const half = new Float32Array(64);

/**
 * Takes each 8x8 block of the plane (values 0-255) inside the rectangle, which starts on a multiple of 8, through the cosine
 * transform, rounds it to whole steps and back. A block cut off by the picture's edge is left as it is.
 */
export function quantiseBlocks(plane: Float32Array, stride: number, within: Rectangle, steps: Float32Array): void {
  for (let top = within.top; top + 8 <= within.bottom; top += 8) {
    for (let left = within.left; left + 8 <= within.right; left += 8) {
      quantiseBlock(plane, stride, top * stride + left, steps);
    }
  }
}

function quantiseBlock(plane: Float32Array, stride: number, start: number, steps: Float32Array): void {
  for (let row = 0; row < 8; row++) {
    const from = start + row * stride;
    for (let column = 0; column < 8; column++) block[row * 8 + column] = (plane[from + column] ?? 0) - 128;
  }
  forwardRows(block, half);
  forwardRows(half, block);
  let kept = 0;
  for (let index = 0; index < 64; index++) {
    const step = steps[index] ?? 1;
    // What Math.round says, in less time.
    const level = Math.floor((block[index] ?? 0) / step + 0.5);
    if (level !== 0) kept = index;
    block[index] = level * step;
  }
  if (kept === 0) {
    const flat = (block[0] ?? 0) / 8 + 128;
    for (let row = 0; row < 8; row++) plane.fill(flat, start + row * stride, start + row * stride + 8);
    return;
  }
  backwardRows(block, half);
  backwardRows(half, block);
  for (let row = 0; row < 8; row++) {
    for (let column = 0; column < 8; column++) {
      plane[start + row * stride + column] = (block[row * 8 + column] ?? 0) + 128;
    }
  }
}

/** Transforms each row and writes it as a column: twice gives both directions, the right way round again. */
function forwardRows(from: Float32Array, to: Float32Array): void {
  for (let row = 0; row < 8; row++) {
    const at = row * 8;
    const s0 = (from[at] ?? 0) + (from[at + 7] ?? 0);
    const s1 = (from[at + 1] ?? 0) + (from[at + 6] ?? 0);
    const s2 = (from[at + 2] ?? 0) + (from[at + 5] ?? 0);
    const s3 = (from[at + 3] ?? 0) + (from[at + 4] ?? 0);
    const d0 = (from[at] ?? 0) - (from[at + 7] ?? 0);
    const d1 = (from[at + 1] ?? 0) - (from[at + 6] ?? 0);
    const d2 = (from[at + 2] ?? 0) - (from[at + 5] ?? 0);
    const d3 = (from[at + 3] ?? 0) - (from[at + 4] ?? 0);
    for (let wave = 0; wave < 64; wave += 16) {
      to[wave + row] =
        (cosines[wave] ?? 0) * s0 +
        (cosines[wave + 1] ?? 0) * s1 +
        (cosines[wave + 2] ?? 0) * s2 +
        (cosines[wave + 3] ?? 0) * s3;
      to[wave + 8 + row] =
        (cosines[wave + 8] ?? 0) * d0 +
        (cosines[wave + 9] ?? 0) * d1 +
        (cosines[wave + 10] ?? 0) * d2 +
        (cosines[wave + 11] ?? 0) * d3;
    }
  }
}

function backwardRows(from: Float32Array, to: Float32Array): void {
  for (let row = 0; row < 8; row++) {
    const at = row * 8;
    const f0 = from[at] ?? 0;
    const f1 = from[at + 1] ?? 0;
    const f2 = from[at + 2] ?? 0;
    const f3 = from[at + 3] ?? 0;
    const f4 = from[at + 4] ?? 0;
    const f5 = from[at + 5] ?? 0;
    const f6 = from[at + 6] ?? 0;
    const f7 = from[at + 7] ?? 0;
    for (let place = 0; place < 4; place++) {
      const even =
        f0 * (cosines[place] ?? 0) +
        f2 * (cosines[16 + place] ?? 0) +
        f4 * (cosines[32 + place] ?? 0) +
        f6 * (cosines[48 + place] ?? 0);
      const odd =
        f1 * (cosines[8 + place] ?? 0) +
        f3 * (cosines[24 + place] ?? 0) +
        f5 * (cosines[40 + place] ?? 0) +
        f7 * (cosines[56 + place] ?? 0);
      to[place * 8 + row] = even + odd;
      to[(7 - place) * 8 + row] = even - odd;
    }
  }
}
