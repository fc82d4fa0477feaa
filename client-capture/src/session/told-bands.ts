import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import type { BandId } from "@overcue/shared-geometry/bands";
import type { ReadCheckpoint } from "../pipeline/rep-readings.ts";

/** The bands that were told as decided while the rep under way happened. */
export interface ToldBands {
  tell(reading: ReadCheckpoint): void;
  /** The rep under way has ended: what was told of it so far, to be held against its readings. The next one begins with nothing told. */
  finish(): Corrections;
  forget(): void;
}

/** Those of the finished rep's readings that take back a band that was told: another one, or none that is sure. */
type Corrections = (finished: readonly ReadCheckpoint[]) => readonly ReadCheckpoint[];

export function makeToldBands(): ToldBands {
  let told = new Map<CheckpointId, BandId>();
  return {
    tell(reading) {
      const band = decidedBand(reading);
      if (band !== null) told.set(reading.checkpoint, band);
    },
    finish() {
      const ofThisRep = told;
      told = new Map();
      return (finished) =>
        finished.filter((reading) => {
          const before = ofThisRep.get(reading.checkpoint);
          return before !== undefined && before !== decidedBand(reading);
        });
    },
    forget() {
      told = new Map();
    },
  };
}

function decidedBand({ checkpoint, readOuts }: ReadCheckpoint): BandId | null {
  const place = placeReadAt(readOuts, checkpoint);
  return place?.defined === true && place.band.decided ? place.band.band : null;
}
