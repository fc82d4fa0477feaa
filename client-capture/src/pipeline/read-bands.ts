import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import { assumedCamera, noReadOuts, readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { Configuration } from "./configuration.ts";

/** The station, and the camera that is read through: null where one had to be assumed. */
export type ReadThrough = Pick<Configuration, "settings" | "camera">;

/** What can be read of the shaft at this moment; without a shaft every read-out says so. */
export function readBands(
  shaft: ShaftInWorld | null,
  { settings, camera }: ReadThrough,
  checkpoint: CheckpointId | null = null,
): ReadOuts {
  return shaft === null
    ? noReadOuts("shaft-not-seen")
    : readOutsOf(shaft, settings, checkpoint, camera === null ? assumedCamera : undefined);
}
