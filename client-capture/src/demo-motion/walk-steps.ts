import type { DemoGolfer } from "./demo-golfer-settings.ts";
import type { KeyPose } from "./key-pose.ts";
import type { Step } from "./rep-steps.ts";
import { bodyMeasures } from "./body-measures.ts";
import { stance } from "./stance.ts";
import { planeFromDirection } from "./swing-plane.ts";

const stepTime = 0.5;
const strides = 6;
const strideLength = 0.42;

/** Stands up, turns to the target, walks there, turns and walks back to the ball with the club carried in the lead hand. */
export function walkSteps(address: KeyPose, upright: KeyPose, golfer: DemoGolfer): readonly Step[] {
  const carried: KeyPose = {
    ...upright,
    ...planeFromDirection({ x: 0.1, y: -0.75, z: -0.654 }, 0),
    gripX: 0.3,
    gripY: upright.pelvisY - 0.16,
    gripZ: 0.8 * (golfer.height / 1.78),
    trailOn: 0,
    trailFreeX: -0.3,
    trailFreeY: upright.pelvisY - 0.06,
    trailFreeZ: 0.76 * (golfer.height / 1.78),
  };
  const steps: Step[] = [{ after: 1, pose: carried, how: "rest" }];
  const walker = new Walker(carried, golfer);
  const facing = Math.PI / 2;
  for (const turn of [0.5, 1]) steps.push(...walker.step(0, turn * facing));
  for (let k = 1; k <= strides; k++) steps.push(...walker.step(k * strideLength, facing));
  for (const turn of [0.5, 0, -0.5, -1]) steps.push(...walker.step(walker.along, turn * facing));
  for (let k = strides - 1; k >= 0; k--) steps.push(...walker.step(k * strideLength, -facing));
  for (const turn of [-0.5, 0]) steps.push(...walker.step(0, turn * facing));
  steps.push({ after: 0.5, pose: carried, how: "rest" }, { after: 1.2, pose: address, how: "rest" });
  return steps;
}

/** Puts one foot after the other under a body that moves on. */
class Walker {
  along = 0;
  pose: KeyPose;
  #lead = true;
  readonly #feet;

  constructor(pose: KeyPose, golfer: DemoGolfer) {
    this.pose = pose;
    this.#feet = stance(golfer, bodyMeasures(golfer.height));
  }

  /** One foot goes to where it stands under a body at `along` metres towards the target with this turn. */
  step(along: number, yaw: number): Step[] {
    const from = this.pose;
    const { middle, leadToe, trailToe } = this.#feet;
    const toe = this.#lead ? leadToe : trailToe;
    const narrow = 0.45;
    const away = { x: (toe.x - middle.x) * narrow, y: toe.y - middle.y };
    const place = {
      x: middle.x + along + Math.cos(yaw) * away.x - Math.sin(yaw) * away.y - toe.x,
      y: middle.y + Math.sin(yaw) * away.x + Math.cos(yaw) * away.y - toe.y,
    };
    const put = (z: number, share: number): Partial<KeyPose> =>
      this.#lead
        ? {
            leadFootX: from.leadFootX + share * (place.x - from.leadFootX),
            leadFootY: from.leadFootY + share * (place.y - from.leadFootY),
            leadFootZ: z,
            leadFootYaw: from.leadFootYaw + share * (yaw - from.leadFootYaw),
          }
        : {
            trailFootX: from.trailFootX + share * (place.x - from.trailFootX),
            trailFootY: from.trailFootY + share * (place.y - from.trailFootY),
            trailFootZ: z,
            trailFootYaw: from.trailFootYaw + share * (yaw - from.trailFootYaw),
          };
    const body = (share: number): Partial<KeyPose> => ({
      rootX: from.rootX + share * (along - strideLength * 0.25 * Math.sign(along - this.along) - from.rootX),
      rootYaw: from.rootYaw + share * (yaw - from.rootYaw),
    });
    const middleOfStep: KeyPose = { ...from, ...body(0.5), ...put(0.06, 0.5) };
    this.pose = { ...from, ...body(1), ...put(0, 1) };
    this.#lead = !this.#lead;
    this.along = along;
    return [
      { after: stepTime / 2, pose: middleOfStep, how: "pass" },
      { after: stepTime / 2, pose: this.pose, how: "pass" },
    ];
  }
}
