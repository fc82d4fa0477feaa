import { placeReadAt } from "@overcue/shared-geometry/place-read-at";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import { placeCheckpointIds, type PlaceCheckpoint } from "../drill/drill-schema.ts";
import type { RepRecord } from "../journal/events.ts";

/** Where the club pointed at one checkpoint of one rep: y in metres with one standard deviation. */
export interface Place {
  readonly checkpoint: PlaceCheckpoint;
  readonly y: Metres;
  readonly sd: Metres;
}

/**
 * The places of a rep, in the order of the swing. Where a checkpoint was passed more than once (a pump), the last pass counts. A read-out that is not
 * defined gives no place.
 */
export function placesOf(rep: RepRecord): readonly Place[] {
  return placeCheckpointIds.flatMap((checkpoint) => {
    const reading = rep.checkpoints.findLast((each) => each.checkpoint === checkpoint);
    if (!reading) return [];
    const place = placeReadAt(reading.readOuts, checkpoint);
    return place?.defined === true ? [{ checkpoint, y: metres(place.y), sd: metres(place.sdY) }] : [];
  });
}
