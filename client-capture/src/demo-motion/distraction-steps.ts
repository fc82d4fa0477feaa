import { blendPoses } from "./blend-poses.ts";
import { checkpointPoses } from "./checkpoint-poses.ts";
import { evenPlaces, type DemoDistraction, type DemoGolfer } from "./demo-golfer-settings.ts";
import type { KeyPose } from "./key-pose.ts";
import type { Step } from "./rep-steps.ts";
import { planeFromDirection } from "./swing-plane.ts";
import { walkSteps } from "./walk-steps.ts";

const pass = (after: number, pose: KeyPose): Step => ({ after, pose, how: "pass" });
const rest = (after: number, pose: KeyPose): Step => ({ after, pose, how: "rest" });

/** What happens between reps, from a still address and back to it. */
export function distractionSteps(what: DemoDistraction, golfer: DemoGolfer): readonly Step[] {
  const poses = checkpointPoses(golfer, evenPlaces, { x: 0, y: 0, z: 0 });
  const { address } = poses;
  const size = golfer.height / 1.78;
  switch (what) {
    case "waggle": {
      const back = { ...address, phi: address.phi + 0.5, gripX: address.gripX - 0.04, gripZ: address.gripZ + 0.02 };
      const over = { ...address, phi: address.phi - 0.12, gripX: address.gripX + 0.03, gripZ: address.gripZ + 0.03 };
      return [pass(0.4, back), pass(0.45, over), pass(0.45, back), rest(0.6, address)];
    }
    case "practice-brush": {
      const back = blendPoses(address, poses.takeaway, 0.95);
      const over = { ...address, gripZ: address.gripZ + 0.035 };
      const through = blendPoses(over, poses.shaftLevelThrough, 0.6);
      const turn = (after: number, pose: KeyPose): Step => ({ after, pose, how: "turn" });
      return [
        turn(0.8, back),
        pass(0.4, over),
        turn(0.4, through),
        pass(0.45, over),
        turn(0.45, back),
        pass(0.4, over),
        turn(0.4, through),
        rest(1, address),
      ];
    }
    case "re-grip": {
      const raised = { ...address, gripZ: address.gripZ + 0.1, gripY: address.gripY + 0.06, tilt: 0.45 };
      const off = {
        ...raised,
        trailOn: 0,
        trailFreeX: -0.2,
        trailFreeY: raised.gripY + 0.12,
        trailFreeZ: raised.gripZ + 0.05,
      };
      return [rest(0.6, raised), rest(0.4, off), rest(0.5, off), rest(0.5, raised), rest(0.8, address)];
    }
    case "look-up": {
      const up = { ...address, tilt: 0.4, faceYaw: -1.2, faceLift: 0.45 };
      return [rest(0.8, up), rest(1, up), rest(0.8, address)];
    }
    case "lean-on-club": {
      const leaning = {
        ...upright(address),
        ...planeFromDirection({ x: -0.06, y: -0.12, z: -Math.sqrt(1 - 0.06 ** 2 - 0.12 ** 2) }, 0),
        gripX: 0.1,
        gripY: address.gripY + 0.13,
        gripZ: 0.815 * size,
        trailOn: 0,
        trailFreeX: -0.26,
        trailFreeY: address.pelvisY - 0.06,
        trailFreeZ: 1.0 * size,
      };
      return [rest(1.2, leaning), rest(2, leaning), rest(1.2, address)];
    }
    case "tee-up": {
      const down = {
        ...address,
        tilt: 1.5,
        pelvisZ: 0.72 * size,
        pelvisY: address.pelvisY + 0.12,
        trailOn: 0,
        trailFreeX: 0.03,
        trailFreeY: 0.06,
        trailFreeZ: 0.1,
        ...planeFromDirection({ x: 0.12, y: -0.45, z: -0.885 }, 0),
        gripX: 0.3,
        gripY: address.gripY - 0.03,
        gripZ: 0.735 * size,
      };
      return [rest(1.4, down), rest(0.8, down), rest(1.4, address)];
    }
    case "walk-away-and-back":
      return walkSteps(address, upright(address), golfer);
  }
}

/** Standing up straight. */
function upright(address: KeyPose): KeyPose {
  return {
    ...address,
    tilt: 0.06,
    sideBend: 0,
    pelvisY: address.pelvisY - 0.08,
    pelvisZ: address.pelvisZ + 0.03,
    faceLift: 0.1,
  };
}
