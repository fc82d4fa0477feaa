import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { degreesFromRadians } from "@overcue/shared-geometry/units";
import type { Handed } from "@overcue/shared-geometry/station";
import type { Body } from "../pipeline/body.ts";
import { handsInPicture } from "../pipeline/hands-in-picture.ts";
import type { RepReading } from "../pipeline/rep-readings.ts";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { ClipReport, Pair, ReportedRep, ReportedShaft } from "../pipeline/clip-report.ts";
import { frameAt } from "./frame-at.ts";
import type { MeasuredClip } from "./measure-clip.ts";

export function clipReport(
  clip: string,
  info: SourceInfo,
  measured: MeasuredClip,
  handed: Handed,
  withReadOuts: boolean,
): ClipReport {
  return {
    clip,
    width: info.width,
    height: info.height,
    fps: round(rateOf(measured.frames.map(({ t }) => t)) ?? info.nominalFramesPerSecond, 3),
    frames: measured.frames.map(({ t, measured: at }, frame) => {
      const found = at === null ? undefined : measured.answer.frames[at];
      return {
        frame,
        t: round(t / 1000, 6),
        shaft: found === undefined ? null : reportedShaft(found.shaft),
        pose: found === undefined ? null : reportedPose(found.body, found.t, handed),
      };
    }),
    reps: measured.answer.reps.map((rep) =>
      reportedRep(
        rep,
        measured.frames.map(({ t }) => t),
        withReadOuts,
      ),
    ),
  };
}

function reportedRep(rep: RepReading, times: readonly number[], withReadOuts: boolean): ReportedRep {
  const { kind, complete, missing, tempo } = rep;
  const checkpoints = rep.checkpoints.map(({ checkpoint, t, sdMs, readOuts }) => {
    const at = frameAt(times, t);
    const dated = {
      t: round(t / 1000, 6),
      frame: round(at.frame, 3),
      sdFrames: round(sdMs / at.millisecondsPerFrame, 3),
    };
    return [checkpoint, withReadOuts ? { ...dated, readOuts } : dated] as const;
  });
  return { kind, complete, missing, tempo, checkpoints: Object.fromEntries(checkpoints) };
}

/** Frames a second by the median step between their times; null for fewer than two frames. */
function rateOf(times: readonly number[]): number | null {
  const steps = times.slice(1).map((t, i) => t - (times[i] ?? t));
  const middle = steps.toSorted((a, b) => a - b)[steps.length >> 1];
  return middle === undefined || middle <= 0 ? null : 1000 / middle;
}

function reportedShaft(shaft: ShaftInImage): ReportedShaft | null {
  if (shaft.status === "lost") return null;
  return {
    status: shaft.status,
    grip: pair(shaft.grip),
    head: shaft.head === null ? null : pair(shaft.head),
    angleDeg: round(degreesFromRadians(shaft.angle), 3),
    sdDeg: round(degreesFromRadians(shaft.sd), 3),
  };
}

function reportedPose(body: Body | null, t: number, handed: Handed): { hands: Pair; score: number } | null {
  const hands = body === null || body.t !== t ? null : handsInPicture(body, handed);
  return hands === null || body === null ? null : { hands: pair(hands.at), score: round(body.score, 4) };
}

const pair = ({ x, y }: { readonly x: number; readonly y: number }): Pair => [round(x, 2), round(y, 2)];
const round = (value: number, digits: number): number => Number(value.toFixed(digits));
