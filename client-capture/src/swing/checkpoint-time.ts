import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Milliseconds } from "@overcue/shared-geometry/units";

/** A checkpoint's instant between samples, with one standard deviation, milliseconds. */
export interface CheckpointTime {
  readonly checkpoint: CheckpointId;
  readonly t: Milliseconds;
  readonly sd: number;
}
