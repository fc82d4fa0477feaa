import type { Body } from "@overcue/client-capture/pipeline/body";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { milliseconds } from "@overcue/shared-geometry/units";

export interface DrawnLine {
  /** Where the line begins, its direction, length and width in pixels, and its grey level. */
  readonly x: number;
  readonly y: number;
  readonly angle: number;
  readonly length: number;
  readonly width: number;
  readonly level: number;
}

/** A stream of numbers in [0, 1), the same for the same seed (mulberry32). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A grey picture with lines on it, edges smoothed over a pixel, and even noise of +-`noise` levels. */
export function drawPicture(
  width: number,
  height: number,
  level: number,
  lines: readonly DrawnLine[],
  noise: number,
  random: () => number,
): Picture {
  const luma = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let value = level;
      for (const line of lines) {
        const share = cover(line, x + 0.5, y + 0.5);
        value += share * (line.level - value);
      }
      luma[y * width + x] = Math.max(0, Math.min(255, Math.round(value + noise * (2 * random() - 1))));
    }
  }
  return { width, height, luma, chroma: null };
}

/** What a line leaves that turns by `turn` radians about (`aboutX`, `aboutY`) while the shutter is open, half of it before where it is given; even noise on top. */
export function drawTurning(
  width: number,
  height: number,
  level: number,
  line: DrawnLine,
  turn: number,
  aboutX: number,
  aboutY: number,
  noise: number,
  random: () => number,
): Picture {
  const moments = 48;
  const light = new Float64Array(width * height);
  for (let i = 0; i < moments; i++) {
    const by = turn * ((i + 0.5) / moments - 0.5);
    const [cos, sin] = [Math.cos(by), Math.sin(by)];
    const [dx, dy] = [line.x - aboutX, line.y - aboutY];
    const turned = {
      ...line,
      x: aboutX + cos * dx - sin * dy,
      y: aboutY + sin * dx + cos * dy,
      angle: line.angle + by,
    };
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const at = y * width + x;
        light[at] = (light[at] as number) + cover(turned, x + 0.5, y + 0.5) * (line.level - level);
      }
    }
  }
  const luma = Uint8Array.from(light, (sum) =>
    Math.max(0, Math.min(255, Math.round(level + sum / moments + noise * (2 * random() - 1)))),
  );
  return { width, height, luma, chroma: null };
}

function cover(line: DrawnLine, x: number, y: number): number {
  const dx = x - line.x;
  const dy = y - line.y;
  const along = dx * Math.cos(line.angle) + dy * Math.sin(line.angle);
  const across = Math.abs(-dx * Math.sin(line.angle) + dy * Math.cos(line.angle));
  if (along < 0 || along > line.length) return 0;
  return Math.max(0, Math.min(1, line.width / 2 + 0.5 - across));
}

/** A golfer seen down the line with the hands at (`x`, `y`) and a torso of `torso` pixels, as a pose model would report it; the hands with `visibility`, 0 to 1. */
export function drawBody(t: number, x: number, y: number, torso: number, visibility = 0.9): Body {
  const landmarks = Array.from({ length: 33 }, () => ({ x: x - torso, y: y - 0.5 * torso, visibility: 0.9 }));
  const put = (index: number, dx: number, dy: number, seen = 0.9): void => {
    landmarks[index] = { x: x + dx * torso, y: y + dy * torso, visibility: seen };
  };
  for (const index of [11, 12]) put(index, -0.5, -1.1);
  for (const index of [23, 24]) put(index, -1, -0.25);
  for (const index of [25, 26]) put(index, -0.9, 0.5);
  for (const index of [27, 28]) put(index, -1, 1.3);
  for (const index of [13, 14]) put(index, -0.3, -0.6);
  for (const index of [15, 16]) put(index, -0.04, -0.06, visibility);
  for (const index of [19, 20]) put(index, 0.02, 0.03, visibility);
  return { t: milliseconds(t), landmarks, world: [], score: 0.9 };
}
