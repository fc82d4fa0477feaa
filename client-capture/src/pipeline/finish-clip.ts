import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { StepOutput } from "./step.ts";

/** A whole clip, gone over once more with what came later in it. */
export interface ClipAnswer {
  readonly frames: readonly {
    readonly t: number;
    readonly shaft: ShaftInImage;
    readonly output: StepOutput;
  }[];
}

export function finishClip(outputs: readonly StepOutput[]): ClipAnswer {
  const bettered = new Map<number, ShaftInImage>();
  for (const { shaft } of outputs) if (shaft.lagged !== null) bettered.set(shaft.lagged.t, shaft.lagged);
  return {
    frames: outputs.map((output) => ({ t: output.t, shaft: bettered.get(output.t) ?? output.shaft.now, output })),
  };
}
