import { exactCamera, type CameraSpread } from "@overcue/shared-geometry/camera-spread";
import type { Camera } from "@overcue/shared-geometry/camera";
import { filterShaft, startFilter, type ShaftFilterState } from "@overcue/shared-geometry/filter-shaft";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { filterInput, type Sighting } from "./filter-input.ts";
import { isKnown } from "./is-known.ts";

export interface LiftState {
  readonly filter: ShaftFilterState;
  /** When a shaft was last seen, milliseconds. */
  readonly seenAt: number;
}

export const startLift: LiftState = { filter: startFilter, seenAt: Number.NEGATIVE_INFINITY };

/** A club unseen for longer than this, milliseconds, is met anew. */
export const longestUnseen = 1500;

/**
 * The shaft in the world: this picture's, or carried on by its motion where it was not seen; null where neither is known well enough
 * to point anywhere.
 */
export function liftToWorld(
  state: LiftState,
  sighting: Sighting,
  camera: Camera | CameraSpread,
  settings: StationSettings,
): { readonly state: LiftState; readonly output: ShaftInWorld | null } {
  const { shaft } = sighting;
  const filter = shaft.t - state.seenAt > longestUnseen ? startFilter : state.filter;
  const through = "moved" in camera ? camera : exactCamera(camera);
  const input = filterInput(sighting, through.camera, settings);
  const filtered = filterShaft(filter, input, { through, settings });
  const answer = filtered.output.shaft;
  return {
    state: { filter: filtered.state, seenAt: input.seen === null ? state.seenAt : shaft.t },
    output: answer !== null && isKnown(answer) ? answer : null,
  };
}
