import { bandAt } from "@overcue/shared-geometry/band-interval";
import { decideBand } from "@overcue/shared-geometry/decide-band";
import { metres } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import { liveEstimate, lostEstimate, sceneLayout, sure } from "./practice-scenes.ts";

/** One rep of a scripted run takes this long, at the speed of a brisk flow rep. Milliseconds. */
export const repMs = 3000;

/**
 * What the phone would tell at a moment of a run of brisk reps: the butt point sweeps over all bands and back, the shaft
 * is lost for an instant near the top, the checkpoint moves on. Harsher than a person swings, on purpose.
 */
export function runEstimate(sequence: number, at: number, capturedAt: number): Estimate {
  const share = (at % repMs) / repMs;
  if (share > 0.42 && share < 0.47) return lostEstimate(sequence, capturedAt, "blurred-away");
  const y = 0.4 + 0.75 * Math.sin(2 * Math.PI * share * 2);
  const x = -0.2 + 0.25 * Math.cos(2 * Math.PI * share);
  const sdY = 0.02 + 0.03 * share;
  const decision = decideBand(y, metres(sdY), sceneLayout, 0.8);
  const band = decision.decided
    ? sure(bandAt(y, sceneLayout), decision.odds)
    : {
        decided: false as const,
        candidates: [...decision.candidates] as [(typeof decision.candidates)[0], (typeof decision.candidates)[1]],
        odds: [...decision.odds] as [number, number],
      };
  return liveEstimate(sequence, capturedAt, {
    x,
    y,
    sdY,
    band,
    checkpoint: checkpointAt(share),
    phase: share < 0.45 ? "back" : "down",
  });
}

function checkpointAt(share: number): CheckpointId | null {
  if (share < 0.1) return null;
  if (share < 0.25) return "takeaway";
  if (share < 0.55) return "arm-level-back";
  return share < 0.75 ? "arm-level-down" : "impact";
}
