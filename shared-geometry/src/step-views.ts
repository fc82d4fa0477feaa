import type { CameraSpread } from "./camera-spread.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { noErrors, viewShaft, type LiftRefusal, type ShaftView, type ViewErrors } from "./view-shaft.ts";

/** What one sd of one independent error does: the views on either side. */
export interface ViewStep {
  readonly down: ShaftView;
  readonly up: ShaftView;
}

/** A step for each error of the observation, then one for each direction in which the camera is uncertain. */
export function stepViews({ upright, moved }: CameraSpread, observation: LiftObservation): ViewStep[] | LiftRefusal {
  const { offsetSd, gripAlongSd, angleSd, depth, head } = observation;
  const steps: ViewStep[] = [];
  const take = (down: ShaftView | LiftRefusal, up: ShaftView | LiftRefusal): void => {
    if (typeof down !== "string" && typeof up !== "string") steps.push({ down, up });
  };
  const sds = [offsetSd, gripAlongSd, angleSd, depth.sd, head?.alongSd ?? 0];
  for (const [index, sd] of sds.entries()) {
    if (!(Number.isFinite(sd) && sd >= 0)) return "bad-observation";
    take(viewShaft(upright, observation, errorOf(index, -sd)), viewShaft(upright, observation, errorOf(index, sd)));
  }
  for (const { down, up } of moved) {
    take(viewShaft(down, observation, noErrors), viewShaft(up, observation, noErrors));
  }
  return steps.length === sds.length + moved.length ? steps : "bad-observation";
}

function errorOf(index: number, by: number): ViewErrors {
  const errors: [number, number, number, number, number] = [0, 0, 0, 0, 0];
  errors[index] = by;
  return errors;
}
