import { median } from "./median.ts";
import type { RepSamples } from "./rep-samples.ts";
import type { NotARep, Segment } from "./segment-reps.ts";
import { swingTuning } from "./swing-tuning.ts";

export type RepKind = "full" | "half" | "pump" | "flow" | "rehearsal";

/** Why a movement that went back, turned and came down is still no rep; null where it is one. */
export function refuseRep(rep: RepSamples, segment: Segment): NotARep | null {
  if (!wasSeenUp(rep, segment)) return "club-lost";
  const grips = rep.samples.flatMap((sample) =>
    sample.shaft === null ? [] : [{ t: sample.t, grip: sample.shaft.grip }],
  );
  const start = rep.rest?.hands ?? grips.find((sample) => sample.t >= rep.setOffAt)?.grip;
  const peak = segment.tops[0];
  if (start === undefined || peak === undefined) return "club-lost";
  const farthest = Math.max(
    0,
    ...grips
      .filter((sample) => sample.t >= rep.setOffAt && sample.t <= segment.passedLowAt)
      .map(({ grip }) => Math.hypot(grip.x - start.x, grip.y - start.y, grip.z - start.z)),
  );
  if (farthest < swingTuning.leastHandTravel) return "hands-stayed";
  const atTop = grips.filter(({ t }) => Math.abs(t - peak.t) <= swingTuning.aboutTurn).map(({ grip }) => grip.z);
  if (rep.rest !== null && atTop.length > 0 && median(atTop) < rep.rest.hands.z - swingTuning.mostSinking)
    return "hands-sank";
  if (rep.address !== null && peak.angle - rep.address.angle < swingTuning.leastTurn) return "too-short";
  if (wentUpInFront(rep, peak.t)) return "not-behind";
  if (footShift(rep) > swingTuning.mostFootShift) return "walked";
  return null;
}

/** A club that goes out of sight before it is as high as in a rep, and is supposed to go on up from there, need not have gone up at all. */
const wasSeenUp = ({ samples, setOffAt }: RepSamples, { passedLowAt }: Segment): boolean =>
  samples.some(
    ({ t, tracked, angle }) =>
      tracked && angle !== null && angle >= swingTuning.leastPeak && t >= setOffAt && t <= passedLowAt,
  );

/** A club lifted in front of the body first comes level across the target line; a backswing comes level pointing along it. */
function wentUpInFront(rep: RepSamples, topAt: number): boolean {
  const rising = rep.samples.filter(({ t }) => t >= rep.setOffAt && t <= topAt);
  const passed = rising.findIndex(({ shaft }) => shaft !== null && shaft.toHead.z > 0.42);
  const level = rising
    .slice(0, passed < 0 ? undefined : passed)
    .flatMap(({ shaft }) => (shaft !== null && Math.abs(shaft.toHead.z) < 0.42 ? [Math.abs(shaft.toHead.x)] : []));
  return level.length > 1 && median(level) < 0.35;
}

function footShift(rep: RepSamples): number {
  const feet = rep.samples.flatMap((sample) => (sample.feet === null ? [] : [sample.feet]));
  const third = Math.floor(feet.length / 3);
  if (third === 0) return 0;
  const early = feet.slice(0, third);
  const late = feet.slice(-third);
  const shift = (axis: "x" | "y"): number => median(late.map((p) => p[axis])) - median(early.map((p) => p[axis]));
  return Math.hypot(shift("x"), shift("y"));
}

/** Seconds of downswing decide a rehearsal; more than one top a pump; no rest at the ball and a club forward of it, turning round there or resting, a flow. */
export function kindOfRep(rep: RepSamples, segment: Segment, downSeconds: number | null): RepKind {
  if (segment.tops.length > 1) return "pump";
  const peak = Math.max(...segment.tops.map((top) => top.angle));
  if (peak < swingTuning.fullPeak) return "half";
  const forward = Math.min(segment.forwardBefore?.angle ?? 0, rep.rest?.angle ?? 0);
  if (rep.address === null && forward < -swingTuning.flowForward) return "flow";
  if (downSeconds !== null && downSeconds > swingTuning.rehearsalDown) return "rehearsal";
  return "full";
}
