import type { SceneSettings } from "../scene-settings.ts";

/**
 * The lamps' mean light over each row's exposure, into `out`: 1 + a sine at twice the mains' frequency, averaged over the
 * exposure (so that a whole number of its periods shows none). Rows are read one after the other.
 */
export function lampAt(settings: SceneSettings, tMs: number, out: Float32Array): void {
  const { mains, flicker } = settings.sensor;
  if (mains === 0 || flicker === 0) {
    out.fill(1);
    return;
  }
  const turn = (2 * Math.PI * 2 * mains) / 1000;
  const halfAngle = (turn * settings.exposureMs) / 2;
  const left = (flicker * Math.sin(halfAngle)) / halfAngle;
  for (let row = 0; row < out.length; row++) {
    const readAt = tMs + settings.readOutMs * ((row + 0.5) / out.length - 0.5);
    out[row] = 1 + left * Math.sin(turn * readAt);
  }
}
