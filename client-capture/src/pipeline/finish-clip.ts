import type { FinishedRep } from "../swing/finish-rep.ts";
import type { Configuration } from "./configuration.ts";
import { goOverAgain } from "./go-over-again.ts";
import { repReadings, type RepReading } from "./rep-readings.ts";
import { repsInPicture } from "./reps-in-picture.ts";
import type { StepOutput, StepState } from "./step.ts";
import { toldLive, type ToldLive } from "./told-live.ts";
import type { Body } from "./body.ts";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** A whole clip, gone over once more with what came later in it. */
export interface ClipAnswer {
  /** One for each picture of a clip; of a show, which is only asked for its reps, none. */
  readonly frames: readonly {
    readonly t: number;
    readonly shaft: ShaftInImage;
    readonly world: ShaftInWorld | null;
    readonly body: Body | null;
  }[];
  readonly reps: readonly RepReading[];
  readonly live: ToldLive;
}

/**
 * A clip without a solved station has its reps dated in the picture, for a guessed camera would lift the club to places where it
 * never was. Needs a state that was started to keep everything, and its outputs from the first picture on.
 */
export function finishClip(state: StepState, outputs: readonly StepOutput[], configuration: Configuration): ClipAnswer {
  const again = goOverAgain(state.shaft.evidence, outputs, configuration);
  return {
    frames: outputs.map(({ t, body, shaft }, at) => ({
      t,
      shaft: again.shafts[at] ?? shaft.now,
      world: again.worlds[at] ?? null,
      body,
    })),
    reps:
      configuration.camera === null
        ? repsInPicture(
            outputs.map(({ t, picture, body, shaft }, at) => ({
              t,
              width: picture.width,
              shaft: again.shafts[at] ?? shaft.now,
              body,
              turned: shaft.turned,
            })),
            configuration.settings,
          )
        : again.reps.map((rep: FinishedRep) => repReadings(rep, configuration)),
    live: toldLive(outputs, configuration),
  };
}
