import type { LineWindow } from "./line-window.ts";
import type { BodyMarks } from "./mark-body.ts";
import { blockAfter, blockLength, flank, type Strip } from "./strip.ts";

/** What speaks for a line counts less where the body is (there a line may well be a limb's edge), and nothing outside of the picture. */
export function distrustBody(strip: Strip, window: LineWindow, marks: BodyMarks): void {
  const { blocks, backwardBlocks, nearest, width, runs, slope, forward } = strip;
  const { free } = marks;
  const { half, size } = window;
  const on = strip.alongX ? 1 : size;
  const beside = strip.alongX ? size : 1;
  const left = half - (width - 1) / 2;
  for (let block = nearest; block < blocks + backwardBlocks; block = blockAfter(strip, block)) {
    const major =
      block < blocks ? forward * (block + 0.5) * blockLength : -forward * (block - blocks + 0.5) * blockLength;
    const row = Math.round(major);
    const from = (half + row) * on + (left + Math.round(slope * row)) * beside;
    for (let i = flank; i < width - flank; i++) {
      const trust = free[from + i * beside] as number;
      const at = block * width + i;
      const evidence = runs[at] as number;
      if (trust < 255 && evidence > 0) runs[at] = (evidence * trust) / 255;
    }
  }
}
