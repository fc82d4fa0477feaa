import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StickChannel } from "./stick-channel.ts";
import { stationTuning } from "./station-tuning.ts";

export interface FoundEnd {
  readonly at: Point<"image">;
  readonly isEnd: boolean;
  /** One standard deviation along the stick. */
  readonly sd: number;
}

/** Beside the stick, this far off its middle, the ground is looked at (pixels). */
const asideNear = 4;
const asideFar = 7;

/** So far beyond its end a stick no longer tints the picture, whose colours are half as fine as its brightness (pixels). */
const clearOfEnd = 3;

/**
 * Where a stick ends beyond `towards`, looked for along the line from `from`: where its brightness over the ground beside it falls to half
 * and stays down. Where it never does within reach, or the picture ends first, the last bright place on the line serves (no end).
 */
export function findEnd(
  seen: Pick<StickChannel, "channel" | "whitened">,
  from: Point<"image">,
  towards: Point<"image">,
  contrast: number,
): FoundEnd {
  const length = Math.hypot(towards.x - from.x, towards.y - from.y);
  const ux = (towards.x - from.x) / length;
  const uy = (towards.y - from.y) / length;
  const place = (along: number): Point<"image"> => imagePoint(from.x + along * ux, from.y + along * uy);
  const noEnd = (along: number): FoundEnd => ({ at: place(along), isEnd: false, sd: stationTuning.endGap });
  const { endShare, endGap, endReach, hiddenStep } = stationTuning;
  const level = endShare * contrast;
  const start = Math.floor(length * 0.3);
  const stop = Math.ceil(length * (1 + endReach));
  let lastHigh: { readonly along: number; readonly over: number } | null = null;
  let falls: number | null = null;
  for (let along = start; along <= stop; along++) {
    const over = overGround(seen.channel, place(along), { x: -uy, y: ux });
    if (over === null) return noEnd(lastHigh?.along ?? along);
    if (over >= level) {
      lastHigh = { along, over };
      falls = null;
    } else if (lastHigh && falls === null) {
      falls = lastHigh.along + (lastHigh.over - level) / Math.max(1e-6, lastHigh.over - over);
    }
    if (falls !== null && along - falls > endGap && along > length * (1 - endReach)) {
      const strange = strangeness(seen.whitened, place, falls, { x: -uy, y: ux });
      const covered = strange === null || strange > hiddenStep;
      return covered ? noEnd(falls) : { at: place(falls), isEnd: true, sd: 0 };
    }
  }
  return noEnd(lastHigh?.along ?? length);
}

/** Brightness on the line over the ground on both sides of it; null outside of the picture. */
function overGround(
  channel: StickChannel["channel"],
  at: Point<"image">,
  across: { x: number; y: number },
): number | null {
  const middle = [-0.7, 0, 0.7].map((by) => channel(at.x + by * across.x, at.y + by * across.y));
  const sides = [-asideFar, -asideNear, asideNear, asideFar].map((by) =>
    channel(at.x + by * across.x, at.y + by * across.y),
  );
  let ground = 0;
  let count = 0;
  for (const value of sides) {
    if (value === null) continue;
    ground += value;
    count++;
  }
  const bright = Math.max(...middle.map((value) => value ?? -Infinity));
  return count === 0 || bright === -Infinity ? null : bright - ground / count;
}

/**
 * How unlike the ground beside the stick just before its end the place just beyond it is, sds; null outside of the picture. Compared close by, so that
 * the edge of a mat farther off is not taken for a shoe.
 */
function strangeness(
  whitened: StickChannel["whitened"],
  place: (along: number) => Point<"image">,
  end: number,
  across: { readonly x: number; readonly y: number },
): number | null {
  const sum: [number, number, number] = [0, 0, 0];
  const { endGap } = stationTuning;
  const gather = (along: number, aside: number, by: number): boolean => {
    const at = place(along);
    const colour = whitened(at.x + aside * across.x, at.y + aside * across.y);
    if (!colour) return false;
    for (let channel = 0; channel < 3; channel++) sum[channel] = (sum[channel] ?? 0) + by * (colour[channel] ?? 0);
    return true;
  };
  for (let step = clearOfEnd; step <= endGap + clearOfEnd; step++) {
    const seen = [gather(end + step, 0, 2), gather(end - step, asideNear, -1), gather(end - step, -asideNear, -1)];
    if (!seen.every(Boolean)) return null;
  }
  return Math.hypot(...sum) / (2 * (endGap + 1));
}
