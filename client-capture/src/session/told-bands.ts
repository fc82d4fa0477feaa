import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import type { BandId } from "@overcue/shared-geometry/bands";
import type { ReadCheckpoint } from "../pipeline/rep-readings.ts";

/** The bands that were told as decided while the rep under way happened. */
export interface ToldBands {
  tell(reading: ReadCheckpoint): void;
  /** The finished rep's readings that take back a band that was told: another one, or none that is sure. Forgets what was told. */
  corrections(finished: readonly ReadCheckpoint[]): readonly ReadCheckpoint[];
  forget(): void;
}

export function makeToldBands(): ToldBands {
  const told = new Map<CheckpointId, BandId>();
  return {
    tell(reading) {
      const band = decidedBand(reading);
      if (band !== null) told.set(reading.checkpoint, band);
    },
    corrections(finished) {
      const taken = finished.filter((reading) => {
        const before = told.get(reading.checkpoint);
        return before !== undefined && before !== decidedBand(reading);
      });
      told.clear();
      return taken;
    },
    forget() {
      told.clear();
    },
  };
}

function decidedBand({ checkpoint, readOuts }: ReadCheckpoint): BandId | null {
  const place = placeReadAt(readOuts, checkpoint);
  return place?.defined === true && place.band.decided ? place.band.band : null;
}
