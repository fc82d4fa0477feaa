import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { milliseconds } from "@overcue/shared-geometry/units";
import { drawSwing } from "./swing-pictures.ts";

export interface TrackerTimes {
  readonly p50: number;
  readonly p95: number;
  readonly trackedShare: number;
}

/** Times the live tracker over `frames` pictures at 60 a second, after a warm-up of 120. */
export function timeTracker(frames: number): TrackerTimes {
  const swing = drawSwing(24);
  let state = startShaftTracker({ handed: "right" });
  const times: number[] = [];
  let tracked = 0;
  for (let i = 0; i < frames + 120; i++) {
    const shown = swing[i % swing.length];
    if (shown === undefined) continue;
    const t = milliseconds((i * 1000) / 60);
    // Every third picture brings a pose, as on a phone.
    const body = { ...shown.body, t: i % 3 === 0 ? t : milliseconds(((i - (i % 3)) * 1000) / 60) };
    const began = performance.now();
    const result = trackShaft(state, { picture: shown.picture, t, body });
    const took = performance.now() - began;
    state = result.state;
    if (i < 120) continue;
    times.push(took);
    if (result.output.now.status === "tracked") tracked++;
  }
  times.sort((a, b) => a - b);
  const quantile = (share: number): number => times[Math.floor(share * (times.length - 1))] ?? Number.NaN;
  return { p50: quantile(0.5), p95: quantile(0.95), trackedShare: tracked / frames };
}
