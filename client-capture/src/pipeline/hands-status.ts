import type { Milliseconds } from "@overcue/shared-geometry/units";
import { shaftTuning } from "../shaft/shaft-tuning.ts";
import type { Body } from "./body.ts";

export type HandsStatus = "seen" | "predicted" | "lost";

/** An answer of the pose model that is older than this, milliseconds, says where the hands were, not where they are. */
const stillSeen = 60;
const stillPredicted = 1000 * shaftTuning.oldestPose;

/** How the hands' place is known at `t`. Both ends are closed: exactly `stillSeen` old is seen. */
export function handsStatus(body: Body | null, t: Milliseconds): HandsStatus {
  if (body === null || t - body.t > stillPredicted) return "lost";
  return t - body.t <= stillSeen ? "seen" : "predicted";
}
