import { milliseconds, type Milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { fitCrossing, fitTurningPoint, type Crossing, type FitOptions, type SeriesPoint } from "./fit-crossing.ts";
import type { FollowedSample } from "./follow-swing.ts";
import type { RepSamples } from "./rep-samples.ts";
import type { Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";
import { leadHandAboveGrip } from "./lead-hand.ts";

/** A checkpoint's instant between samples, with one standard deviation, milliseconds. */
export interface CheckpointTime {
  readonly checkpoint: CheckpointId;
  readonly t: Milliseconds;
  readonly sd: number;
}

const angleFit: FitOptions = {
  least: swingTuning.fitWindow.least,
  change: swingTuning.fitWindow.angle,
  sharedErrors: swingTuning.sharedErrors,
};
const heightFit: FitOptions = { ...angleFit, change: swingTuning.fitWindow.height };

/**
 * Dates every checkpoint of a rep that its samples can show, in the order of the swing; a checkpoint that was not passed or not seen
 * is left out. Crossings are those last before the first top going back, and first after the last top coming down.
 */
export function dateCheckpoints(rep: RepSamples, segment: Segment): CheckpointTime[] {
  const firstTop = segment.tops[0]?.t ?? segment.passedLowAt;
  const lastTop = segment.tops[segment.tops.length - 1]?.t ?? firstTop;
  const series = seriesOf(rep.samples);
  const { lasting, lastingElevation } = swingTuning;
  const back = { from: rep.setOffAt - 20, to: firstTop };
  const down = { from: lastTop, to: Math.min(segment.passedLowAt + 400, segment.endedAt) };
  const found: (CheckpointTime | null)[] = [];
  if (rep.rest !== null) found.push({ checkpoint: "address", t: milliseconds(rep.setOffAt), sd: 40 });
  found.push(
    crossing(
      "takeaway",
      series.handsBehindThigh,
      0,
      back,
      "up",
      "first",
      heightFit,
      Math.hypot(lasting.thigh, lasting.hands),
    ),
    crossing("shaft-level-back", series.elevation, 0, back, "up", "first", angleFit, lastingElevation),
    crossing(
      "arm-level-back",
      series.handAboveShoulder,
      0,
      back,
      "up",
      "first",
      heightFit,
      Math.hypot(lasting.shoulder, lasting.hands),
    ),
    turningPoint(series.angle, segment.tops[segment.tops.length - 1]?.t ?? firstTop),
    crossing(
      "arm-level-down",
      series.handAboveShoulder,
      0,
      down,
      "down",
      "last",
      heightFit,
      Math.hypot(lasting.shoulder, lasting.hands),
    ),
    crossing("shaft-level-down", series.elevation, 0, down, "down", "last", angleFit, lastingElevation),
    crossing(
      "impact",
      series.angle,
      rep.rest?.angle ?? 0,
      down,
      "down",
      "first",
      angleFit,
      rep.rest === null ? 0.1 : lastingElevation,
    ),
  );
  return found.flatMap((one) => (one === null ? [] : [one]));
}

interface RepSeries {
  readonly angle: SeriesPoint[];
  readonly elevation: SeriesPoint[];
  readonly handAboveShoulder: SeriesPoint[];
  /** Metres by which the hands are further from the target than the trail thigh. */
  readonly handsBehindThigh: SeriesPoint[];
}

function seriesOf(samples: readonly FollowedSample[]): RepSeries {
  const series: RepSeries = { angle: [], elevation: [], handAboveShoulder: [], handsBehindThigh: [] };
  for (const { t, shaft, angle, angleSd, leadShoulderZ, trailThighX } of samples) {
    if (shaft === null || angle === null) continue;
    const variance = (index: number): number => Math.sqrt(Math.max(0, shaft.covariance[index] ?? 0));
    series.angle.push({ t, value: angle, sd: angleSd });
    series.elevation.push({ t, value: Math.asin(Math.min(1, Math.max(-1, shaft.toHead.z))), sd: variance(24) });
    if (leadShoulderZ !== null) {
      const hand = shaft.grip.z + leadHandAboveGrip(shaft.toHead);
      series.handAboveShoulder.push({
        t,
        value: hand - leadShoulderZ.value,
        sd: Math.hypot(variance(12), leadShoulderZ.sd),
      });
    }
    if (trailThighX !== null) {
      series.handsBehindThigh.push({
        t,
        value: trailThighX.value - shaft.grip.x,
        sd: Math.hypot(variance(0), trailThighX.sd),
      });
    }
  }
  return series;
}

/** `lastingSd`: the part of the error that every sample of the rep shares, in the series' unit. */
function crossing(
  checkpoint: CheckpointId,
  series: readonly SeriesPoint[],
  level: number,
  within: { readonly from: number; readonly to: number },
  way: "up" | "down",
  which: "first" | "last",
  options: FitOptions,
  lastingSd: number,
): CheckpointTime | null {
  const sign = way === "up" ? 1 : -1;
  const passes = (index: number): boolean => {
    const a = series[index];
    const b = series[index + 1];
    if (a === undefined || b === undefined || b.t < within.from || a.t > within.to) return false;
    return sign * (a.value - level) < 0 && sign * (b.value - level) >= 0;
  };
  const indices = Array.from(series.keys()).filter(passes);
  const index = which === "first" ? indices[0] : indices[indices.length - 1];
  if (index === undefined) return null;
  const fitted = fitCrossing(series, index, level, options);
  return fitted === null ? null : dated(checkpoint, fitted, lastingSd);
}

function dated(checkpoint: CheckpointId, fitted: Crossing, lastingSd: number): CheckpointTime {
  return { checkpoint, t: fitted.t, sd: Math.hypot(fitted.sd, lastingSd / Math.max(Math.abs(fitted.slope), 1e-6)) };
}

function turningPoint(series: readonly SeriesPoint[], t: number): CheckpointTime | null {
  const index = series.findIndex((point) => point.t >= t);
  const fitted = index < 0 ? null : fitTurningPoint(series, index, angleFit);
  return fitted === null ? null : { checkpoint: "top", t: fitted.t, sd: fitted.sd };
}
