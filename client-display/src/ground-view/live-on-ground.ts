import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Metres } from "@overcue/shared-geometry/units";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { LiveOnGround } from "./draw-list/draw-live.ts";
import { liveSubject } from "./live-subject.ts";

/** An estimate older than this is not shown any more: the picture it speaks of is gone. Milliseconds. */
export const stalePicture = 700;

/** What the ground shows of an estimate: nothing at all where it is old or the shaft is not known. */
export function liveOnGround(
  estimate: Estimate | null,
  age: number | null,
  aimedAt: CheckpointId | null,
  gripToHead: Metres,
): LiveOnGround {
  if (estimate === null || (age !== null && age > stalePicture)) return { shaft: null, place: null };
  if (estimate.shaft.status === "lost") return { shaft: null, place: null };
  const { subject, readOut } = liveSubject(estimate.readOuts, aimedAt);
  const { world } = estimate;
  return {
    shaft:
      world === null
        ? null
        : {
            grip: { x: world.grip.x, y: world.grip.y },
            head: { x: world.grip.x + gripToHead * world.toHead.x, y: world.grip.y + gripToHead * world.toHead.y },
          },
    place: readOut.defined ? { subject, x: readOut.x, y: readOut.y, sdX: readOut.sdX, sdY: readOut.sdY } : null,
  };
}
