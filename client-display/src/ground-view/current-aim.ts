import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Aim } from "@overcue/shared-geometry/wire/practice";

const orderOf = (checkpoint: CheckpointId): number => checkpointIds.indexOf(checkpoint);

/**
 * The aim that comes next in the rep: the first after the checkpoint last passed; the first of all between reps. While the club is held at a checkpoint that has an aim, that one: it is held to be
 * looked at. Null without aims.
 */
export function currentAim(
  aims: readonly Aim[],
  { passed, held }: { readonly passed: CheckpointId | null; readonly held: CheckpointId | null },
): Aim | null {
  const ofHeld = aims.find(({ checkpoint }) => checkpoint === held);
  if (ofHeld !== undefined) return ofHeld;
  const inOrder = aims.toSorted((a, b) => orderOf(a.checkpoint) - orderOf(b.checkpoint));
  if (passed === null) return inOrder[0] ?? null;
  return inOrder.find((aim) => orderOf(aim.checkpoint) > orderOf(passed)) ?? inOrder.at(-1) ?? null;
}
