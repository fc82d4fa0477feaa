import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { blendPoses } from "./blend-poses.ts";
import { checkpointPoses, type CheckpointPoses } from "./checkpoint-poses.ts";
import type { DemoGolfer, DemoRepPlan, DemoTempo } from "./demo-golfer-settings.ts";
import type { Knot } from "./key-path.ts";
import type { KeyPose } from "./key-pose.ts";
import { backswingTime, downswingTime } from "./swing-timing.ts";

/** A knot told by the seconds since the one before it. */
export interface Step {
  readonly after: number;
  readonly pose: KeyPose;
  readonly how: Knot["how"];
  /** `start` of the backswing's motion, `turn` at its top, `through` at the last knot of the swing. */
  readonly mark?: "start" | "turn" | "through";
  /** Which checkpoint is held from this knot to the next. */
  readonly holds?: CheckpointId;
}

const noShift = { x: 0, y: 0, z: 0 };

/** One rep of any kind, from a still address and back to it. */
export function repSteps(plan: DemoRepPlan, golfer: DemoGolfer): readonly Step[] {
  const poses = checkpointPoses(golfer, plan.places, plan.handsShift ?? noShift);
  switch (plan.kind) {
    case "full":
      return [...hold(plan, swing(poses, plan.tempo, "address")), ...finishAndReturn(poses, plan.tempo)];
    case "rehearsal":
      return [...hold(plan, swing(poses, plan.tempo, "address")), ...stopAndReturn(poses, plan.tempo)];
    case "half":
      return [...hold(plan, halfSwing(poses, plan.tempo)), ...stopAndReturn(poses, plan.tempo)];
    case "flow":
      return [
        ...toForward(poses),
        ...hold(plan, swing(poses, plan.tempo, "forward")),
        ...stopAndReturn(poses, plan.tempo),
      ];
    case "pump":
      return [...pump(poses, plan.tempo), ...stopAndReturn(poses, plan.tempo)];
    case "continuous":
      return [...continuous(poses, plan.tempo, Math.max(1, plan.swings ?? 2)), ...stopAndReturn(poses, plan.tempo)];
  }
}

/** The club held a little forward of the ball and off the ground: where a flowing swing starts. */
const forward = (poses: CheckpointPoses): KeyPose => blendPoses(liftedOver(poses), poses.shaftLevelThrough, 0.55);

/** Passing over the ball without touching it. */
const liftedOver = (poses: CheckpointPoses): KeyPose => ({ ...poses.address, gripZ: poses.address.gripZ + 0.04 });

type From = "address" | "forward" | "through";

/** Backswing and downswing to impact. */
function swing(poses: CheckpointPoses, tempo: DemoTempo, from: From): Step[] {
  return [...back(poses, tempo, from, poses.top), ...down(poses, tempo, poses.top)];
}

function back(poses: CheckpointPoses, tempo: DemoTempo, from: From, top: KeyPose): Step[] {
  const { takeaway, shaftLevelBack, armLevelBack } = poses;
  const starts = { address: poses.address, forward: forward(poses), through: poses.armLevelThrough };
  const start = starts[from];
  const before = {
    address: [poses.early],
    forward: [liftedOver(poses)],
    through: [poses.shaftLevelThrough, liftedOver(poses)],
  };
  const ways = [...before[from], takeaway, shaftLevelBack, armLevelBack, top];
  const share = (pose: KeyPose): number => backswingTime((pose.phi - start.phi) / (top.phi - start.phi));
  return ways.map((pose, k): Step => {
    const since = k === 0 ? 0 : share(ways[k - 1] ?? start);
    const after = (share(pose) - since) * tempo.backswing;
    return k === ways.length - 1 ? { after, pose, how: "turn", mark: "turn" } : { after, pose, how: "pass" };
  });
}

function down(poses: CheckpointPoses, tempo: DemoTempo, top: KeyPose): Step[] {
  const ways = [poses.armLevelDown, poses.shaftLevelDown, poses.impact];
  const share = (pose: KeyPose): number => downswingTime((pose.phi - top.phi) / (poses.impact.phi - top.phi));
  return ways.map((pose, k): Step => {
    const since = k === 0 ? 0 : share(ways[k - 1] ?? top);
    return { after: (share(pose) - since) * tempo.downswing, pose, how: "pass" };
  });
}

function halfSwing(poses: CheckpointPoses, tempo: DemoTempo): Step[] {
  const top = blendPoses(poses.armLevelBack, poses.top, 0.4);
  return [...back(poses, tempo, "address", top), ...down(poses, tempo, top)];
}

function pump(poses: CheckpointPoses, tempo: DemoTempo): Step[] {
  const low = blendPoses(poses.armLevelDown, poses.shaftLevelDown, 0.3);
  const high = blendPoses(poses.armLevelDown, poses.top, 0.75);
  const stroke = Math.max(0.6, 0.8 * tempo.downswing);
  const once: Step[] = [
    { after: 0.65 * stroke, pose: poses.armLevelDown, how: "pass" },
    { after: 0.35 * stroke, pose: low, how: "turn" },
    { after: 0.35 * stroke, pose: poses.armLevelDown, how: "pass" },
    { after: 0.65 * stroke, pose: high, how: "turn", mark: "turn" },
  ];
  return [...back(poses, tempo, "address", poses.top), ...once, ...once, ...down(poses, tempo, high)];
}

function continuous(poses: CheckpointPoses, tempo: DemoTempo, swings: number): Step[] {
  const steps = swing(poses, tempo, "address");
  for (let k = 1; k < swings; k++) {
    steps.push(
      { after: 0.3 * tempo.downswing, pose: poses.shaftLevelThrough, how: "pass" },
      { after: 0.6 * tempo.downswing + 0.15, pose: poses.armLevelThrough, how: "turn", mark: "start" },
      ...swing(poses, tempo, "through"),
    );
  }
  return steps;
}

function finishAndReturn(poses: CheckpointPoses, tempo: DemoTempo): Step[] {
  return [
    { after: 0.22 * tempo.downswing, pose: poses.shaftLevelThrough, how: "pass" },
    { after: 0.27 * tempo.downswing, pose: poses.armLevelThrough, how: "pass" },
    { after: 0.7 * tempo.downswing + 0.3, pose: poses.finish, how: "rest", mark: "through" },
    { after: 0.8, pose: poses.finish, how: "rest" },
    { after: 0.8, pose: poses.armLevelThrough, how: "pass" },
    { after: 0.6, pose: forward(poses), how: "pass" },
    { after: 1, pose: poses.address, how: "rest" },
  ];
}

function stopAndReturn(poses: CheckpointPoses, tempo: DemoTempo): Step[] {
  const stop = blendPoses(poses.shaftLevelThrough, poses.armLevelThrough, 0.35);
  return [
    { after: 0.3 * tempo.downswing, pose: poses.shaftLevelThrough, how: "pass" },
    { after: 0.4 * tempo.downswing + 0.25, pose: stop, how: "rest", mark: "through" },
    { after: 0.5, pose: stop, how: "rest" },
    { after: 1.4, pose: poses.address, how: "rest" },
  ];
}

function toForward(poses: CheckpointPoses): Step[] {
  return [
    { after: 0.9, pose: forward(poses), how: "rest" },
    { after: 0.8, pose: forward(poses), how: "rest", mark: "start" },
  ];
}

const heldKnots: Partial<Record<CheckpointId, number>> = {
  takeaway: -7,
  "shaft-level-back": -6,
  "arm-level-back": -5,
  top: -4,
  "arm-level-down": -3,
  "shaft-level-down": -2,
};

/** Makes one checkpoint of a swing a stop; the ways into and out of it take longer, as stopping does. */
function hold(plan: DemoRepPlan, steps: readonly Step[]): readonly Step[] {
  if (!plan.hold) return steps;
  const place = heldKnots[plan.hold.at];
  if (place === undefined) throw new RangeError(`demo golfer: no hold at ${plan.hold.at}`);
  const stop = steps.length + place;
  const { at, seconds } = plan.hold;
  return steps.flatMap((step, k) => {
    if (k === stop) {
      const arrive: Step = { ...step, after: step.after * 1.6 + 0.1, how: "rest", holds: at };
      return [arrive, { after: seconds, pose: step.pose, how: "rest" } satisfies Step];
    }
    return k === stop + 1 ? [{ ...step, after: step.after * 1.6 + 0.1 }] : [step];
  });
}
