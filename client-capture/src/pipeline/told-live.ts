import type { Configuration } from "./configuration.ts";
import { readCheckpoint, type ReadCheckpoint } from "./rep-readings.ts";
import type { StepOutput } from "./step-after-shaft.ts";

/** The checkpoints that were told while they happened, with what was read there then. */
export const toldLive = (outputs: readonly StepOutput[], configuration: Configuration): ReadCheckpoint[] =>
  outputs.flatMap(({ swing }) => swing.passed.map((one) => readCheckpoint(one, configuration)));
