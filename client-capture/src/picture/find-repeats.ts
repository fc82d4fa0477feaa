import type { Picture } from "./picture.ts";

/** What has to be remembered of the pictures so far. */
export interface RepeatState {
  readonly last: Picture | null;
  /** How many pixels changed into each of the last pictures, newest last. */
  readonly changes: readonly number[];
  readonly inARow: number;
}

export const startRepeats: RepeatState = { last: null, changes: [], inARow: 0 };

/** A pixel has changed that is so many grey levels brighter or darker: more than a coder makes of the same picture at qualities that are sent. */
const changedLevels = 20;
/** A repeat changes fewer pixels than this share of what two of the pictures just before it did: of one alone it may have been a coder's fresh start. */
const mostShare = 0.07;
/** And fewer than this share of all pixels, however much there was before: lamps that flicker change most of a picture, and then hardly any. */
const mostOfAll = 0.001;
/** A quarter of the rate is the slowest that clips are stretched from; what stands still for longer really does. */
const mostInARow = 3;
/** So many pictures hold two new ones, whatever it was stretched from. */
const lookedBack = 2 * mostInARow + 1;

/**
 * Whether a clip's picture is the one before it shown again, as where a clip was stretched to a higher rate: by how suddenly everything stops. It shows
 * nothing new, and the club was not there at its time.
 */
export function findRepeat(
  state: RepeatState,
  picture: Picture,
): { readonly state: RepeatState; readonly output: boolean } {
  const { last, changes, inARow } = state;
  if (last?.width !== picture.width || last.height !== picture.height) {
    return { state: { ...startRepeats, last: picture }, output: false };
  }
  const change = changedPixels(last, picture);
  const [, second = 0] = changes.toSorted((a, b) => b - a);
  const most = Math.min(mostShare * second, mostOfAll * picture.luma.length);
  const repeats = inARow < mostInARow && change < most;
  const kept = [...changes, change].slice(-lookedBack);
  return {
    state: repeats ? { last, changes: kept, inARow: inARow + 1 } : { last: picture, changes: kept, inARow: 0 },
    output: repeats,
  };
}

/** Each row is as much brighter or darker as its lamps were: that is no change. */
function changedPixels({ width, height, luma: before }: Picture, { luma: now }: Picture): number {
  let count = 0;
  for (let row = 0; row < height; row++) {
    const [from, to] = [row * width, (row + 1) * width];
    let [lightBefore, lightNow] = [1, 1];
    for (let at = from; at < to; at++) {
      lightBefore += before[at] ?? 0;
      lightNow += now[at] ?? 0;
    }
    const gain = lightNow / lightBefore;
    for (let at = from; at < to; at++) {
      if (Math.abs((now[at] ?? 0) - gain * (before[at] ?? 0)) > changedLevels) count++;
    }
  }
  return count;
}
