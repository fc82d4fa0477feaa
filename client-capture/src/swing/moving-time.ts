import { timeAt, type HandsMoment } from "./hands-path.ts";
import { pictureTuning } from "./picture-tuning.ts";

/** Milliseconds in which the hands moved. */
export function movingTime(path: readonly HandsMoment[], from: number, to: number): number {
  let moving = 0;
  let first = 0;
  for (let index = 1; index < path.length; index++) {
    const t = timeAt(path, index);
    while (timeAt(path, first + 1) <= t - pictureTuning.speedOver) first++;
    if (t <= from || t > to) continue;
    const [before, after] = [path[first], path[index]];
    if (before === undefined || after === undefined) continue;
    const way = Math.hypot(after.x - before.x, after.up - before.up);
    if (way > (pictureTuning.holds * (t - before.t)) / 1000) moving += t - timeAt(path, index - 1);
  }
  return moving;
}
