import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { noReadOuts } from "@overcue/shared-geometry/read-outs-of";
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

/** What takes back a band that was told: the finished rep's reading where that has another one, or none that is sure; a reading of nothing where the rep has no such checkpoint. */
type Corrections = (finished: readonly ReadCheckpoint[]) => readonly ReadCheckpoint[];

export function makeToldBands(): ToldBands {
  let told = new Map<CheckpointId, ReadCheckpoint>();
  return {
    tell(reading) {
      if (decidedBand(reading) !== null) told.set(reading.checkpoint, reading);
    },
    finish() {
      const ofThisRep = told;
      told = new Map();
      return (finished) =>
        [...ofThisRep.values()].flatMap((before): ReadCheckpoint[] => {
          const after = finished.find(({ checkpoint }) => checkpoint === before.checkpoint);
          if (after === undefined) return [{ ...before, readOuts: noReadOuts("shaft-not-seen") }];
          return decidedBand(after) === decidedBand(before) ? [] : [after];
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
