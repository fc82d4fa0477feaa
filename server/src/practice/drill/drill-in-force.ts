import type { BandId } from "@overcue/shared-geometry/bands";
import { builtInDrills, freeDrill } from "./built-in/built-in-drills.ts";
import { placeCheckpointIds, type Drill, type DrillCheckpoint, type PlaceCheckpoint } from "./drill-schema.ts";
import { shortLabel } from "../view/words.ts";

/** A drill by its id among the built-in ones and the users' own; null where there is none. */
export function findDrill(drillId: string, own: Readonly<Record<string, Drill>>): Drill | null {
  return builtInDrills.find(({ id }) => id === drillId) ?? own[drillId] ?? null;
}

/** The drill as this golfer practises it: the free drill filled in with the golfer's choice. */
export function fillInFree(drill: Drill, wanted: Readonly<Partial<Record<PlaceCheckpoint, BandId>>>): Drill {
  if (drill.id !== freeDrill) return drill;
  const checkpoints = placeCheckpointIds.flatMap((checkpoint): DrillCheckpoint[] => {
    const band = wanted[checkpoint];
    if (!band) return [];
    return [
      {
        checkpoint,
        wanted: { band },
        cue: { direction: "either", usual: { band } },
        say: `Point the club at the ground that the screen names, ${shortLabel(checkpoint)}.`,
      },
    ];
  });
  return { ...drill, checkpoints };
}
