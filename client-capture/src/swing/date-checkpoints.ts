import type { CheckpointTime } from "./checkpoint-time.ts";
import { elevationOf, handsBehindThigh, leadHandHeight, sdOf } from "./checkpoint-quantities.ts";
import { crossing, followedCrossing, type Stretch } from "./date-crossing.ts";
import { dateImpact } from "./date-impact.ts";
import { milliseconds, type Metres } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { type FitOptions, type SeriesPoint } from "./fit-crossing.ts";
import type { FollowedSample } from "./follow-swing.ts";
import type { RepSamples } from "./rep-samples.ts";
import type { Segment } from "./segment-reps.ts";
import { steadyShoulder } from "./steady-shoulder.ts";
import { timeThroughBall } from "./time-through-ball.ts";
import { turnInPlane } from "./turn-in-plane.ts";
import { swingTuning } from "./swing-tuning.ts";
import { whileHigh } from "./while-high.ts";
import { highestTurn } from "./highest-turn.ts";

const angleFit: FitOptions = {
  least: swingTuning.fitWindow.least,
  change: swingTuning.fitWindow.angle,
  sharedErrors: swingTuning.sharedErrors,
};
const heightFit: FitOptions = { ...angleFit, change: swingTuning.fitWindow.height };

/**
 * Dates every checkpoint of a rep that its samples can show, in the order of the swing; a checkpoint that was not passed or not seen
 * is left out. Going back ends at the first top, coming down begins at the last.
 */
export function dateCheckpoints(rep: RepSamples, segment: Segment, gripToHead: Metres): CheckpointTime[] {
  const firstTop = segment.tops[0]?.t ?? segment.passedLowAt;
  const lastTop = segment.tops[segment.tops.length - 1]?.t ?? firstTop;
  const series = seriesOf(rep.samples, gripToHead);
  const { lasting, lastingElevation } = swingTuning;
  const lastTurn = segment.turns[segment.turns.length - 1]?.t ?? segment.leftLowAt;
  const top = dateTop(rep.samples, lastTurn, lastTop, segment.passedLowAt);
  const back = { from: rep.setOffAt - 20, to: segment.tops.length > 1 ? firstTop : Math.max(firstTop, top.t) };
  const down = { from: Math.min(lastTop, top.t), to: segment.passedLowAt };
  const levelErrors = { lastingSd: lastingElevation, below: swingTuning.holdNear.angle };
  const shaftLevel = (within: Stretch, checkpoint: CheckpointId, way: "up" | "down"): CheckpointTime | null =>
    behindBall(rep.samples, followedCrossing(checkpoint, series.elevation, within, way, angleFit, levelErrors));
  const levelDown = shaftLevel(down, "shaft-level-down", "down");
  const passed = levelDown?.t ?? lastTop;
  const latest = segment.passedLowAt + timeThroughBall(segment);
  const strike = { from: passed, to: Math.min(latest, segment.endedAt) };
  const armSd = Math.hypot(lasting.shoulder, lasting.hands);
  const armLevel = (within: Stretch, checkpoint: CheckpointId, way: "up" | "down"): CheckpointTime | null =>
    followedCrossing(checkpoint, handOverShoulderIn(rep.samples, within), within, way, heightFit, {
      lastingSd: armSd,
      below: armSd,
    });
  const found: (CheckpointTime | null)[] = [];
  if (rep.address !== null) found.push({ checkpoint: "address", t: milliseconds(rep.setOffAt), sd: rep.setOffSd });
  found.push(
    crossing("takeaway", series.handsBehindThigh, 0, back, "up", heightFit, Math.hypot(lasting.thigh, lasting.hands)),
    shaftLevel(back, "shaft-level-back", "up"),
    armLevel(back, "arm-level-back", "up"),
    top,
    armLevel(down, "arm-level-down", "down"),
    levelDown,
    dateImpact(rep, segment, series, strike, levelDown?.t ?? null),
  );
  return found.flatMap((one) => (one === null ? [] : [one]));
}

/** A checkpoint of the way back or down; null where the club was seen past the ball then: it is let down again after a follow-through. */
function behindBall(samples: readonly FollowedSample[], passed: CheckpointTime | null): CheckpointTime | null {
  if (passed === null) return null;
  const followed = samples.filter(({ angle }) => angle !== null);
  const before = followed.findLast(({ t }) => t <= passed.t)?.angle ?? 0;
  const after = followed.find(({ t }) => t >= passed.t)?.angle ?? 0;
  return before < 0 && after < 0 ? null : passed;
}

interface RepSeries {
  readonly elevation: SeriesPoint[];
  /** Where the head is along the target line, metres. */
  readonly headX: SeriesPoint[];
  /** Metres by which the hands are further from the target than the trail thigh. */
  readonly handsBehindThigh: SeriesPoint[];
}

function seriesOf(samples: readonly FollowedSample[], gripToHead: Metres): RepSeries {
  const series: RepSeries = { elevation: [], headX: [], handsBehindThigh: [] };
  for (const { t, shaft, hanging, angleSd, trailThighX } of samples) {
    if (hanging !== null) series.elevation.push({ t, ...elevationOf(hanging) });
    if (shaft === null) continue;
    series.headX.push({
      t,
      value: shaft.grip.x + gripToHead * shaft.toHead.x,
      sd: Math.hypot(sdOf(shaft, 0), gripToHead * angleSd),
    });
    if (trailThighX !== null) series.handsBehindThigh.push({ t, ...handsBehindThigh(shaft, trailThighX) });
  }
  return series;
}

/** The lead hand over the lead shoulder on one way of the swing, the shoulder steadied over that way. */
function handOverShoulderIn(samples: readonly FollowedSample[], way: Stretch): SeriesPoint[] {
  const shoulderAt = steadyShoulder(samples, way);
  return samples.flatMap(({ t, shaft, leadShoulderZ }): SeriesPoint[] => {
    if (shaft === null || t < way.from || t > way.to) return [];
    const shoulder = shoulderAt(t) ?? leadShoulderZ;
    return shoulder === null ? [] : [{ t, ...leadHandHeight(shaft, shoulder) }];
  });
}

/**
 * The top is where the club's turn in its plane reverses, while the hands are about at their highest; where no crest is found there, where the swing angle was
 * highest.
 */
function dateTop(samples: readonly FollowedSample[], backFrom: number, near: number, downTo: number): CheckpointTime {
  const { leastSearch, lasting } = swingTuning;
  const high = whileHigh(samples, { from: backFrom, to: downTo });
  // Out of sight the smoothed club goes the shortest way, which is not round the top.
  const seen = samples.filter(({ tracked }) => tracked);
  const found =
    highestTurn(turnInPlane(seen, near, downTo), high, downTo - near) ??
    highestTurn(turnInPlane(samples, near, downTo), high, downTo - near);
  if (found === null)
    return { checkpoint: "top", t: milliseconds(near), sd: Math.max(leastSearch, high.to - high.from) / 2 };
  return { ...found, sd: Math.hypot(found.sd, lasting.top * (downTo - found.t)) };
}
