import type { BandId } from "@overcue/shared-geometry/bands";
import { bandSubjects, type BandSubject } from "@overcue/shared-geometry/checkpoints";
import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import type { Configuration } from "./configuration.ts";
import { readCheckpoint, type ReadCheckpoint } from "./rep-readings.ts";
import type { StepOutput } from "./step-after-shaft.ts";

/** What was told before the reps were over, as the pictures came. */
export interface ToldLive {
  /** The checkpoints passed, with what was read there then. */
  readonly checkpoints: readonly ReadCheckpoint[];
  /** The bands that were claimed of one picture. */
  readonly bands: readonly { readonly t: number; readonly subject: BandSubject; readonly band: BandId }[];
}

export const toldLive = (outputs: readonly StepOutput[], configuration: Configuration): ToldLive => ({
  checkpoints: outputs.flatMap(({ swing }) => swing.passed.map((one) => readCheckpoint(one, configuration))),
  bands: outputs.flatMap(({ t, readOuts }) =>
    bandSubjects.flatMap((subject) => {
      const read = placeReadOf(readOuts, subject);
      return read.defined && read.band.decided ? [{ t, subject, band: read.band.band }] : [];
    }),
  ),
});
