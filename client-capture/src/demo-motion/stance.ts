import type { Vector } from "@overcue/shared-geometry/vector";
import type { BodyMeasures } from "./body-measures.ts";
import type { DemoGolfer } from "./demo-golfer-settings.ts";

export interface Stance {
  readonly leadToe: Vector;
  readonly trailToe: Vector;
  /** How the feet point, radians towards the target from straight at the ball line. */
  readonly leadYaw: number;
  readonly trailYaw: number;
  /** On the ground between the ankles. */
  readonly middle: { readonly x: number; readonly y: number };
}

/** Feet a little wider apart than the shoulders, toes just behind the toe line, the ball a little forward of the middle. */
export function stance(golfer: DemoGolfer, measures: BodyMeasures): Stance {
  const toes = golfer.station.toeLine + 0.015;
  const half = 0.125 * golfer.height;
  const middleX = -0.03;
  return {
    leadToe: { x: middleX + half + 0.03, y: toes, z: 0 },
    trailToe: { x: middleX - half, y: toes, z: 0 },
    leadYaw: 0.25,
    trailYaw: -0.06,
    middle: { x: middleX, y: toes + measures.foot - measures.heelToAnkle },
  };
}
