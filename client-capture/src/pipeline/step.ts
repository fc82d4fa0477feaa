import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Picture } from "../picture/picture.ts";
import { startShaftTracker, trackShaft, type Effort, type ShaftTrackerState } from "../shaft/track-shaft.ts";
import type { Body } from "./body.ts";
import type { Configuration } from "./configuration.ts";
import { startAfterShaft, stepAfterShaft, type AfterShaftState, type StepOutput } from "./step-after-shaft.ts";

export type { StepOutput };

/** What one picture brings. `body` is the newest answer of the pose model, mostly of an earlier picture. */
export interface StepInput {
  readonly picture: Picture;
  readonly t: Milliseconds;
  readonly body: Body | null;
}

export interface StepState {
  readonly shaft: ShaftTrackerState;
  readonly after: AfterShaftState;
}

/** `keepFor`: how long what each picture showed is kept for going over it again, milliseconds; infinite for a clip. */
export function startStep(configuration: Configuration, keepFor: Milliseconds, effort: Effort): StepState {
  return {
    shaft: startShaftTracker({
      handed: configuration.settings.handed,
      keepEvidence: keepFor,
      effort,
      rodColour: configuration.rod?.colour ?? null,
      rodAlong: configuration.settings.rodBeyondButt > 0,
    }),
    after: startAfterShaft(configuration),
  };
}

/** One picture through every stage, in order: shaft in the picture, body and shaft in the world, swing clock, read-outs. */
export function step(state: StepState, { picture, t, body }: StepInput): { state: StepState; output: StepOutput } {
  const shaft = trackShaft(state.shaft, { picture, t, body });
  const after = stepAfterShaft(state.after, { t, picture, body, shaft: shaft.output });
  return { state: { shaft: shaft.state, after: after.state }, output: after.output };
}
