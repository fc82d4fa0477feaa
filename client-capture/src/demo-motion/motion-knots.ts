import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { addressPose } from "./address-pose.ts";
import type { DemoPlan, DemoRepPlan } from "./demo-golfer-settings.ts";
import { distractionSteps } from "./distraction-steps.ts";
import type { Knot } from "./key-path.ts";
import { repSteps, type Step } from "./rep-steps.ts";

/** Where one rep lies in a motion, in seconds. */
export interface RepSpan {
  readonly plan: DemoRepPlan;
  /** Start of the backswing's motion: the last instant of stillness, or of the turn forward of the ball. */
  readonly start: number;
  /** Whether the club starts soled behind the ball. */
  readonly fromAddress: boolean;
  /** First turn at the top. */
  readonly firstTop: number;
  /** The end of the follow-through, or the turn of the next swing where nobody stops. */
  readonly end: number;
  readonly hold: { readonly at: CheckpointId; readonly from: number; readonly until: number } | null;
}

/** Every knot of a plan, and its reps, from 0 s. A plan begins and ends at a still address. */
export function motionKnots(plan: DemoPlan): { readonly knots: readonly Knot[]; readonly reps: readonly RepSpan[] } {
  const address = addressPose(plan.golfer);
  const knots: Knot[] = [{ t: 0, pose: address, how: "rest" }];
  const reps: RepSpan[] = [];
  let t = 0;
  for (const item of plan.items) {
    if (item.do === "still") {
      if (!(item.seconds > 0)) throw new RangeError("demo golfer: a still time must be longer than nothing");
      t += item.seconds;
      knots.push({ t, pose: address, how: "rest" });
      continue;
    }
    const steps = item.do === "rep" ? repSteps(item, plan.golfer) : distractionSteps(item.what, plan.golfer);
    const times = steps.map((step) => (t += step.after));
    steps.forEach((step, k) => knots.push({ t: times[k] ?? t, pose: step.pose, how: step.how }));
    if (item.do === "rep") reps.push(...repSpans(item, steps, times, (times[0] ?? 0) - (steps[0]?.after ?? 0)));
  }
  return { knots, reps };
}

function repSpans(
  plan: DemoRepPlan,
  steps: readonly Step[],
  times: readonly number[],
  from: number,
): readonly RepSpan[] {
  const marked = (mark: Step["mark"]): number[] => times.filter((_, k) => steps[k]?.mark === mark);
  const later = marked("start");
  const starts = plan.kind === "flow" ? later : [from, ...later];
  const [through] = marked("through");
  const held = steps.findIndex((step) => step.holds !== undefined);
  const hold = steps[held]?.holds;
  return starts.map((start, k) => {
    const end = starts[k + 1] ?? through ?? start;
    const firstTop = marked("turn").find((t) => t > start && t < end) ?? end;
    return {
      plan,
      start,
      fromAddress: k === 0 && plan.kind !== "flow",
      firstTop,
      end,
      hold: hold === undefined ? null : { at: hold, from: times[held] ?? 0, until: times[held + 1] ?? 0 },
    };
  });
}
