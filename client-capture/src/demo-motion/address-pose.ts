import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { normalise } from "@overcue/shared-geometry/vector";
import { bodyMeasures } from "./body-measures.ts";
import type { DemoGolfer } from "./demo-golfer-settings.ts";
import type { KeyPose } from "./key-pose.ts";
import { stance } from "./stance.ts";
import { planeFromDirection } from "./swing-plane.ts";

/** The sole of the club rests this far behind the ball's middle. */
const behindBall = 0.025;
/** The hands stand a little nearer to the target than the head. */
const leanToTarget = 0.03;

/** The still posture at the ball: the club soled at its lie, the hands under the chin, knees soft, the spine leaning from the hips. */
export function addressPose(golfer: DemoGolfer): KeyPose {
  const measures = bodyMeasures(golfer.height);
  const feet = stance(golfer, measures);
  const lie = (golfer.lieDegrees * Math.PI) / 180;
  const toHead = normalise({ x: -leanToTarget, y: -Math.cos(lie), z: -Math.sin(lie) }) ?? { x: 0, y: 0, z: -1 };
  const reach = gripToHead(golfer.station);
  const { phi, psi } = planeFromDirection(toHead, 0);
  const size = golfer.height / 1.78;
  return {
    phi,
    psi,
    gripX: -behindBall - reach * toHead.x,
    gripY: reach * -toHead.y,
    gripZ: reach * -toHead.z,
    shoulderTurn: 0,
    hipTurn: 0,
    tilt: 0.6,
    sideBend: 0.09,
    pelvisX: feet.middle.x + 0.01,
    pelvisY: feet.middle.y + 0.1 * size,
    pelvisZ: 0.89 * size,
    faceYaw: 0,
    faceLift: 0,
    trailHeelLift: 0,
    rootX: 0,
    rootY: 0,
    rootYaw: 0,
    leadOn: 1,
    trailOn: 1,
    leadFreeX: 0.25,
    leadFreeY: feet.middle.y - 0.05,
    leadFreeZ: 0.8 * size,
    trailFreeX: -0.3,
    trailFreeY: feet.middle.y - 0.05,
    trailFreeZ: 0.8 * size,
    leadFootX: 0,
    leadFootY: 0,
    leadFootZ: 0,
    trailFootX: 0,
    trailFootY: 0,
    trailFootZ: 0,
    leadFootYaw: 0,
    trailFootYaw: 0,
  };
}
