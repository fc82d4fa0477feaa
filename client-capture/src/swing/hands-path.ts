import { median } from "./median.ts";
import type { PictureMoment } from "./picture-moment.ts";

/** The hands of one picture in metres, right and up, about where they are in the picture's corner; steadied over three pictures. */
export interface HandsMoment {
  readonly t: number;
  readonly x: number;
  readonly up: number;
}

export const upAt = (path: readonly HandsMoment[], index: number): number => path[index]?.up ?? 0;
export const timeAt = (path: readonly HandsMoment[], index: number): number => path[index]?.t ?? 0;

/** First and last time of the stretch about a top or a low in which the hands are within `depth` metres of it in height. */
export function timeAbout(path: readonly HandsMoment[], turn: number, depth: number): readonly [number, number] {
  const isNear = (index: number): boolean =>
    index >= 0 && index < path.length && Math.abs(upAt(path, index) - upAt(path, turn)) < depth;
  let first = turn;
  let last = turn;
  while (isNear(first - 1)) first--;
  while (isNear(last + 1)) last++;
  return [timeAt(path, first), timeAt(path, last)];
}

/** The path of the hands in metres of the golfer's own scale. Pictures without hands are left out. */
export function handsPath(moments: readonly PictureMoment[], scale: number): HandsMoment[] {
  const seen = moments.flatMap(({ t, hands }) =>
    hands === null || !(scale > 0) ? [] : [{ t, x: hands.x / scale, up: -hands.y / scale }],
  );
  return seen.map(({ t }, index) => {
    const near = seen.slice(Math.max(0, index - 1), index + 2);
    return { t, x: median(near.map((moment) => moment.x)), up: median(near.map((moment) => moment.up)) };
  });
}

/** Highs and lows of the hands in turn, each reached by at least `swing` metres of rise or fall. */
export interface Turn {
  readonly index: number;
  readonly high: boolean;
}

export function turnsOf(path: readonly HandsMoment[], swing: number): Turn[] {
  const turns: Turn[] = [];
  let way: "up" | "down" | "unknown" = "unknown";
  let high = 0;
  let low = 0;
  path.forEach(({ up }, index) => {
    if (up > (path[high]?.up ?? -Infinity)) high = index;
    if (up < (path[low]?.up ?? Infinity)) low = index;
    const fallen = (path[high]?.up ?? up) - up >= swing;
    const risen = up - (path[low]?.up ?? up) >= swing;
    if (way !== "down" && fallen) {
      turns.push({ index: high, high: true });
      way = "down";
      low = index;
    } else if (way !== "up" && risen) {
      turns.push({ index: low, high: false });
      way = "up";
      high = index;
    }
  });
  const last = endOf(way, high, low);
  return last === null ? turns : [...turns, last];
}

function endOf(way: "up" | "down" | "unknown", high: number, low: number): Turn | null {
  if (way === "unknown") return null;
  return way === "up" ? { index: high, high: true } : { index: low, high: false };
}
