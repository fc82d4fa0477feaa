import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import type { RepReading } from "./rep-readings.ts";

export type Pair = readonly [number, number];

/** What `npm run measure` writes: pixels of the upright picture, y down; times in seconds. */
export interface ClipReport {
  readonly clip: string;
  readonly width: number;
  readonly height: number;
  readonly fps: number;
  readonly frames: readonly {
    readonly frame: number;
    readonly t: number;
    readonly shaft: ReportedShaft | null;
    readonly pose: { readonly hands: Pair; readonly score: number } | null;
  }[];
  readonly reps: readonly ReportedRep[];
}

export interface ReportedRep {
  readonly kind: RepReading["kind"];
  readonly complete: boolean;
  readonly missing: readonly CheckpointId[];
  readonly tempo: RepReading["tempo"];
  /** `frame` is fractional, between the frames' times; `readOuts` only where a station was given. */
  readonly checkpoints: Partial<
    Record<
      CheckpointId,
      { readonly t: number; readonly frame: number; readonly sdFrames: number; readonly readOuts?: ReadOuts }
    >
  >;
}

export interface ReportedShaft {
  readonly status: "tracked" | "predicted" | "lost";
  readonly grip: Pair;
  readonly head: Pair | null;
  readonly angleDeg: number;
  readonly sdDeg: number;
}
