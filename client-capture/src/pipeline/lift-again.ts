import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import type { FilterInput } from "@overcue/shared-geometry/filter-shaft";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { smoothRep } from "@overcue/shared-geometry/smooth-rep";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { cameraFor } from "./camera-for.ts";
import type { Configuration } from "./configuration.ts";
import { filterInput, longestUnseen } from "./lift-to-world.ts";
import { saneShaft } from "./sane-shaft.ts";
import type { StepOutput } from "./step.ts";

/** Finished pictures lifted once more, each in the light of those before and after it: one answer a picture, null where it is not known. */
export function liftAgain(
  shafts: readonly ShaftInImage[],
  outputs: readonly StepOutput[],
  configuration: Configuration,
): readonly (ShaftInWorld | null)[] {
  const first = outputs[0];
  if (first === undefined) return [];
  const { settings } = configuration;
  const through = configuration.spread ?? exactCamera(cameraFor(configuration, first.picture));
  const inputs = shafts.map((shaft, at) => {
    const output = outputs[at];
    const sighting = { shaft, body: output?.inWorld ?? null, resting: output?.swing.phase === "still" };
    return filterInput(sighting, through.camera, settings);
  });
  const lifted = new Map<number, ShaftInWorld>();
  for (const stretch of stretches(inputs)) {
    const inputAt = new Map(stretch.map((input) => [input.t, input]));
    for (const shaft of smoothRep(stretch, { through, settings })) {
      const input = inputAt.get(shaft.t);
      const sane = input === undefined ? null : saneShaft(shaft, input, through, settings);
      if (sane !== null) lifted.set(shaft.t, sane);
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
