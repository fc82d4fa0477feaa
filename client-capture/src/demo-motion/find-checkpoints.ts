import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { milliseconds } from "@overcue/shared-geometry/units";
import { addressPose } from "./address-pose.ts";
import type { DemoGolfer } from "./demo-golfer-settings.ts";
import type { DemoPose } from "./demo-pose.ts";
import type { DemoCheckpoint } from "./demo-truth.ts";
import { findRises } from "./find-rises.ts";
import type { KeyPath } from "./key-path.ts";
import type { RepSpan } from "./motion-knots.ts";
import { poseFromKey } from "./pose-from-key.ts";

/**
 * The instants of a rep's checkpoints, found as roots on the motion itself:
 * takeaway: the grip's middle passes the middle of the trail thigh along the target line; shaft level: the shaft's elevation crosses 0; arm level: the lead
 * hand's height crosses the lead shoulder's; top: the club's turn round the swing plane reverses; impact: the head is back where it stood
 * behind the ball. Address is the last instant of stillness. A held checkpoint is told at the start of its hold. Those that a
 * rep passes more than once (pumps) are told each time.
 */
export function findCheckpoints(
  path: KeyPath,
  golfer: DemoGolfer,
  span: RepSpan,
  rep: number,
): readonly DemoCheckpoint[] {
  const pose = (t: number): DemoPose => poseFromKey(path.at(t), golfer, true);
  const headAtAddress = poseFromKey(addressPose(golfer), golfer, true).club?.head.x ?? 0;
  const rise = (t: number): number => pose(t).club?.toHead.z ?? 0;
  const handOverShoulder = (t: number): number => {
    const { body } = pose(t);
    return body.leadHand.z - body.leadShoulder.z;
  };
  const pastThigh = (t: number): number => {
    const { body, club } = pose(t);
    return (body.trailHip.x + body.trailKnee.x) / 2 - (club?.grip.x ?? 0);
  };
  const headPastBall = (t: number): number => (pose(t).club?.head.x ?? 0) - headAtAddress;
  const falling = (f: (t: number) => number) => (t: number) => -f(t);

  const found: { checkpoint: CheckpointId; t: number }[] = [];
  const { start, firstTop, end } = span;
  const first = (checkpoint: CheckpointId, f: (t: number) => number, from: number, to: number): number => {
    const held = span.hold?.at === checkpoint ? span.hold.from : undefined;
    const t = held ?? findRises(f, from, to)[0];
    if (t !== undefined) found.push({ checkpoint, t });
    return t ?? from;
  };
  if (span.fromAddress) found.push({ checkpoint: "address", t: start });
  const takeaway = first("takeaway", pastThigh, start, firstTop);
  const level = first("shaft-level-back", rise, takeaway, firstTop);
  first("arm-level-back", handOverShoulder, level, firstTop);
  const reversal = (t: number): number => -path.rate("phi", t);
  const held =
    span.hold?.at === "arm-level-down" ? [span.hold.from] : findRises(falling(handOverShoulder), firstTop, end);
  // A full finish turns too, high up: no top.
  const lastTopBefore = held.at(-1) ?? end;
  const reversals = findRises(reversal, level, end).filter((t) => t < lastTopBefore && handOverShoulder(t) > 0);
  for (const t of span.hold?.at === "top" ? [span.hold.from] : reversals) found.push({ checkpoint: "top", t });
  for (const t of held) found.push({ checkpoint: "arm-level-down", t });
  const down = first("shaft-level-down", falling(rise), held.at(-1) ?? firstTop, end);
  first("impact", headPastBall, down, end);
  return found.sort((a, b) => a.t - b.t).map(({ checkpoint, t }) => ({ rep, checkpoint, t: milliseconds(t * 1000) }));
}
