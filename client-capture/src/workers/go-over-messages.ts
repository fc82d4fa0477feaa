import type { Configuration } from "../pipeline/configuration.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { StepOutput } from "../pipeline/step.ts";
import type { ShaftEvidence } from "../shaft/track-shaft.ts";

export type ToGoOverWorker =
  /** Starts anew: earlier pictures are dropped. */
  | { readonly do: "start"; readonly configuration: Configuration }
  /** The same as before from here on, seen through another camera or marked otherwise. */
  | { readonly do: "reconfigure"; readonly configuration: Configuration }
  /** One more live picture, in order; where it ended a rep, that rep is gone over once more and told under this id. */
  | { readonly do: "keep"; readonly id: number; readonly evidence: ShaftEvidence; readonly output: StepOutput };

export interface FromGoOverWorker {
  readonly id: number;
  /** Null where the second pass broke. */
  readonly rep: RepReading | null;
}
