import { placeCheckpointIds, type PlaceCheckpoint } from "../drill/drill-schema.ts";
import type { PerCheckpoint } from "./state.ts";

/** The same record without this checkpoint. */
export function without<T>(record: PerCheckpoint<T>, checkpoint: PlaceCheckpoint): PerCheckpoint<T> {
  const kept = placeCheckpointIds.flatMap((id) => {
    const value = record[id];
    return value !== undefined && id !== checkpoint ? [[id, value] as const] : [];
  });
  return Object.fromEntries(kept);
}
