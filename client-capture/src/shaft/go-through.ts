import type { LineSweep } from "./line-sweep-state.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

const reach = 2;

/**
 * What goes on in the same line on the other side of the hands is a rope or a horizon, where nothing lies along the shaft: each direction loses by the
 * strongest of the directions about its opposite whose line it carries on. `weight`: cost of a nat over there. `torso` in working pixels.
 */
export function goThrough(sweep: LineSweep, torso: number, weight: number, tuning: ShaftTuning): void {
  const { directions, evidence, offset, through } = sweep;
  const half = directions / 2;
  const near = tuning.sameLine * torso;
  if (before.length !== directions) before = new Float32Array(directions);
  before.set(evidence);
  for (let i = 0; i < directions; i++) {
    if (!((before[i] as number) > tuning.leastEvidence)) continue;
    let most = 0;
    for (let k = -reach; k <= reach; k++) {
      const other = (i + half + k + directions) % directions;
      const value = before[other] as number;
      if (value > most && Math.abs((offset[i] as number) + (offset[other] as number)) < near) most = value;
    }
    const counted = through[i] as number;
    if (most > counted) evidence[i] = (before[i] as number) - weight * (most - counted);
  }
}

let before = new Float32Array(0);
