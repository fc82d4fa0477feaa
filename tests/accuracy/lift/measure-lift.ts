import { bandSubjectAt, checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { usualLaying, type LayingSpread } from "@overcue/shared-geometry/station-model";
import { measureScene, type BandMeasure } from "./measure-scene.ts";

/** Sticks exactly where they are said to be, but for a hair that keeps the solver's priors proper. */
export const exactLaying: LayingSpread = {
  ballStickAlong: 0.001,
  otherStickAlong: 0.001,
  across: 0.0005,
  turn: 0.0005,
};

export type LayingName = "as-stated" | "laid-by-hand";

export interface LiftMeasure {
  readonly laying: LayingName;
  readonly scenes: number;
  readonly solved: number;
  readonly refusals: ReadonlyMap<string, number>;
  readonly bands: ReadonlyMap<CheckpointId, readonly BandMeasure[]>;
  /** Errors in their own sds by read-out, all checkpoints where it is read. */
  readonly inSds: ReadonlyMap<string, readonly number[]>;
  readonly cameraErrors: readonly number[];
}

/** So many random scenes, checkpoints and hands in turn; seeds from 1. */
export function measureLift(scenes: number, laying: LayingName): LiftMeasure {
  const refusals = new Map<string, number>();
  const bands = new Map<CheckpointId, BandMeasure[]>();
  const inSds = new Map<string, number[]>();
  const cameraErrors: number[] = [];
  let solved = 0;
  for (let scene = 0; scene < scenes; scene++) {
    const checkpoint = checkpointIds[scene % checkpointIds.length] ?? "address";
    const handed = Math.floor(scene / checkpointIds.length) % 2 === 0 ? "right" : "left";
    const measure = measureScene(scene + 1, checkpoint, handed, 1, laying === "as-stated" ? exactLaying : usualLaying);
    if (!measure.solved) {
      refusals.set(measure.reason, (refusals.get(measure.reason) ?? 0) + 1);
      continue;
    }
    solved++;
    cameraErrors.push(measure.cameraError);
    if (measure.band && bandSubjectAt[checkpoint]) listAt(bands, checkpoint).push(measure.band);
    for (const { name, z } of measure.inSds) {
      if (name === "headPoint" && bandSubjectAt[checkpoint] !== "head-point") continue;
      listAt(inSds, name).push(z);
    }
  }
  return { laying, scenes, solved, refusals, bands, inSds, cameraErrors };
}

function listAt<Key, Item>(lists: Map<Key, Item[]>, key: Key): Item[] {
  const list = lists.get(key) ?? [];
  lists.set(key, list);
  return list;
}
