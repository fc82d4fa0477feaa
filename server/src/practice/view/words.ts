import { bandLabels, type BandDecision } from "@overcue/shared-geometry/bands";
import { checkpointLabels } from "@overcue/shared-geometry/checkpoints";
import type { Metres } from "@overcue/shared-geometry/units";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import type { Share } from "../units.ts";

/** The only place where metres become centimetres: "12 cm", without a sign. */
export function inCentimetres(distance: Metres): string {
  return `${Math.round(Math.abs(distance) * 100)} cm`;
}

/** The only place where a share becomes a percentage: "80 %". */
export function inPercent(part: Share): string {
  return `${Math.round(part * 100)} %`;
}

const short: Readonly<Record<PlaceCheckpoint, string>> = {
  takeaway: "takeaway",
  "shaft-level-back": "level back",
  "arm-level-back": "back",
  "arm-level-down": "down",
  "shaft-level-down": "level down",
};

/** "back", "down": short enough for a sentence on the ground screen. */
export const shortLabel = (checkpoint: PlaceCheckpoint): string => short[checkpoint];

export const longLabel = (checkpoint: PlaceCheckpoint): string => checkpointLabels[checkpoint];

/** "ball line", or "unsure: ball line or ball to toes". */
export function bandInWords(decision: BandDecision): string {
  if (decision.decided) return bandLabels[decision.band];
  const [first, second] = decision.candidates;
  return `unsure: ${bandLabels[first]} or ${bandLabels[second]}`;
}
