import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import { noReadOuts, readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** What can be read of the shaft at this moment; without a shaft every read-out says so. */
export function readBands(
  shaft: ShaftInWorld | null,
  settings: StationSettings,
  checkpoint: CheckpointId | null = null,
): ReadOuts {
  return shaft === null ? noReadOuts("shaft-not-seen") : readOutsOf(shaft, settings, checkpoint);
}
