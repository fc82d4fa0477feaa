import type { Picture } from "@overcue/client-capture/picture/picture";
import type { Hands } from "@overcue/client-capture/shaft/hands";
import { createRequire } from "node:module";

/** The part of OpenCV's JS build that is used here. */
interface OpenCv {
  /** There once the build's WebAssembly runs. */
  readonly Mat: new () => Mat;
  readonly CV_8UC1: number;
  matFromArray(rows: number, columns: number, type: number, data: Uint8Array): Mat;
  Canny(from: Mat, to: Mat, low: number, high: number): void;
  HoughLinesP(from: Mat, to: Mat, rho: number, theta: number, votes: number, shortest: number, gap: number): void;
  onRuntimeInitialized: (() => void) | undefined;
}

interface Mat {
  readonly rows: number;
  readonly data32S: Int32Array;
  delete(): void;
}

export interface HoughFinder {
  /** The shaft's direction in radians from hands to head, or null where no segment points at the hands. */
  find(picture: Picture, hands: Hands): number | null;
}

/** Loads OpenCV's JS build (@techstark/opencv-js 4.5.2; it has HoughLinesP, and no line segment detector). */
export async function loadHoughFinder(): Promise<HoughFinder> {
  const loaded: unknown = createRequire(import.meta.url)("@techstark/opencv-js");
  const cv = loaded as OpenCv;
  if (!Object.hasOwn(cv, "Mat")) {
    await new Promise<void>((resolve) => {
      cv.onRuntimeInitialized = resolve;
    });
  }
  return { find: (picture, hands) => findByHough(cv, picture, hands) };
}

/** How far out of the hands the region reaches, in torso lengths: as far as the tracker's. */
const reach = 2.5;

/**
 * Canny edges and the probabilistic Hough transform on the region about the hands; of the segments whose line passes the hands within
 * 0.3 torso lengths and which begin within 0.8, the longest. Parameters as OpenCV's own tutorial for HoughLinesP has them
 * (rho 1, theta 1 degree, 50 votes), the shortest segment set to what a club shows.
 */
function findByHough(cv: OpenCv, picture: Picture, hands: Hands): number | null {
  const left = Math.max(0, Math.floor(hands.x - reach * hands.torso));
  const top = Math.max(0, Math.floor(hands.y - reach * hands.torso));
  const right = Math.min(picture.width, Math.ceil(hands.x + reach * hands.torso));
  const bottom = Math.min(picture.height, Math.ceil(hands.y + reach * hands.torso));
  const columns = right - left;
  const rows = bottom - top;
  if (columns < 16 || rows < 16) return null;
  const region = new Uint8Array(columns * rows);
  for (let row = 0; row < rows; row++) {
    const start = (top + row) * picture.width + left;
    region.set(picture.luma.subarray(start, start + columns), row * columns);
  }
  const grey = cv.matFromArray(rows, columns, cv.CV_8UC1, region);
  const edges = new cv.Mat();
  const lines = new cv.Mat();
  cv.Canny(grey, edges, 50, 150);
  cv.HoughLinesP(edges, lines, 1, Math.PI / 180, 50, 0.35 * hands.torso, 0.06 * hands.torso);
  let best: number | null = null;
  let longest = 0;
  for (let line = 0; line < lines.rows; line++) {
    const [ax = 0, ay = 0, bx = 0, by = 0] = lines.data32S.subarray(line * 4, line * 4 + 4);
    const segment = pointAway(ax + left, ay + top, bx + left, by + top, hands);
    if (segment.length <= longest || segment.passes > 0.3 * hands.torso || segment.begins > 0.8 * hands.torso) continue;
    longest = segment.length;
    best = segment.angle;
  }
  for (const mat of [grey, edges, lines]) mat.delete();
  return best;
}

function pointAway(ax: number, ay: number, bx: number, by: number, hands: Hands) {
  const toA = Math.hypot(ax - hands.x, ay - hands.y);
  const toB = Math.hypot(bx - hands.x, by - hands.y);
  const length = Math.hypot(bx - ax, by - ay) || 1;
  const passes = Math.abs((bx - ax) * (hands.y - ay) - (by - ay) * (hands.x - ax)) / length;
  const angle = toA <= toB ? Math.atan2(by - ay, bx - ax) : Math.atan2(ay - by, ax - bx);
  return { angle, length, passes, begins: Math.min(toA, toB) };
}
