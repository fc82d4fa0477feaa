import type { Handed } from "@overcue/shared-geometry/station";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Odds over `directions` of where a shaft first shows up, summing to 1: anywhere, but rather as at address seen down the line. */
export function arrivalOdds(directions: number, handed: Handed, tuning: ShaftTuning): Float32Array {
  const odds = new Float32Array(directions);
  const middle = handed === "right" ? tuning.addressDirection : Math.PI - tuning.addressDirection;
  let total = 0;
  for (let i = 0; i < directions; i++) {
    const away = (2 * Math.PI * i) / directions - middle;
    odds[i] = Math.exp(tuning.arrivalNarrowness * (Math.cos(away) - 1));
    total += odds[i] as number;
  }
  for (let i = 0; i < directions; i++) {
    odds[i] = tuning.arrivalAnywhere / directions + ((1 - tuning.arrivalAnywhere) * (odds[i] as number)) / total;
  }
  return odds;
}
