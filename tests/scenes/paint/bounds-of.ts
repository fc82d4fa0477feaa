import type { Rectangle } from "../canvas.ts";
import type { Limb } from "./paint-limb.ts";
import type { Stroke } from "./paint-stroke.ts";
import type { Sweep } from "./sweep.ts";

interface Painted {
  readonly solids: readonly (Limb | Stroke)[];
  readonly shadows: readonly Sweep[];
}

/** The smallest rectangle inside the picture that holds everything painted in these moments; never empty. */
export function boundsOf(
  moments: readonly Painted[],
  size: { readonly width: number; readonly height: number },
): Rectangle {
  let left = size.width - 1;
  let top = size.height - 1;
  let right = 1;
  let bottom = 1;
  for (const moment of moments) {
    for (const sweep of [...moment.solids.map((solid) => solid.sweep), ...moment.shadows]) {
      const reach = Math.max(sweep.radiusA, sweep.radiusB) + 2;
      left = Math.min(left, Math.min(...sweep.ax, ...sweep.bx) - reach);
      right = Math.max(right, Math.max(...sweep.ax, ...sweep.bx) + reach);
      top = Math.min(top, Math.min(...sweep.ay, ...sweep.by) - reach);
      bottom = Math.max(bottom, Math.max(...sweep.ay, ...sweep.by) + reach);
    }
  }
  return {
    left: Math.max(0, Math.floor(left)),
    top: Math.max(0, Math.floor(top)),
    right: Math.min(size.width, Math.ceil(right)),
    bottom: Math.min(size.height, Math.ceil(bottom)),
  };
}
