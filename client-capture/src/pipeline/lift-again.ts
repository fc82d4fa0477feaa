import type { CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { FilterInput } from "@overcue/shared-geometry/filter-shaft";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { smoothRep } from "@overcue/shared-geometry/smooth-rep";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { BodyInWorld } from "./body-in-world.ts";
import { filterInput } from "./filter-input.ts";
import { isKnown } from "./is-known.ts";
import { longestUnseen } from "./lift-to-world.ts";

/** What is known beside the shaft in the picture. */
export interface BesideShaft {
  readonly inWorld: BodyInWorld | null;
  /** Whether the club stood still with no rep under way. */
  readonly resting: boolean;
}

/** Finished pictures lifted once more, each in the light of those before and after it: one answer a picture, null where it is not known. */
export function liftAgain(
  shafts: readonly ShaftInImage[],
  beside: readonly BesideShaft[],
  through: CameraSpread,
  settings: StationSettings,
): readonly (ShaftInWorld | null)[] {
  const inputs = shafts.map((shaft, at) => {
    const { inWorld, resting } = beside[at] ?? { inWorld: null, resting: false };
    return filterInput({ shaft, body: inWorld, resting }, through.camera, settings);
  });
  const lifted = new Map<number, ShaftInWorld>();
  for (const stretch of stretches(inputs)) {
    for (const shaft of smoothRep(stretch, { through, settings })) {
      if (isKnown(shaft)) lifted.set(shaft.t, shaft);
    }
  }
  return inputs.map(({ t }) => lifted.get(t) ?? null);
}

/** Cut where the club was out of sight for long: what lies apart says nothing about each other. */
function stretches(inputs: readonly FilterInput[]): FilterInput[][] {
  const found: FilterInput[][] = [];
  let current: FilterInput[] = [];
  let unseen: FilterInput[] = [];
  for (const input of inputs) {
    if (input.seen === null) {
      if (current.length > 0) unseen.push(input);
      continue;
    }
    const last = current[current.length - 1];
    if (last !== undefined && input.t - last.t > longestUnseen) {
      found.push(current);
      current = [];
      unseen = [];
    }
    current.push(...unseen, input);
    unseen = [];
  }
  if (current.length > 0) found.push(current);
  return found;
}
