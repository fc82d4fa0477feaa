import { wrapAngle } from "@overcue/shared-geometry/angle";
import { radians } from "@overcue/shared-geometry/units";
import { compareChange } from "./fan-change.ts";
import type { FittedCandidate } from "./fit-candidate.ts";
import { fitFan, type FanFit } from "./fit-fan.ts";
import { handsSdAcross } from "./hands-track.ts";
import type { ShaftSight } from "./look-for-shaft.ts";
import { sweepFans, type Fan, type FanLook } from "./sweep-fans.ts";

/**
 * The fans of a picture that `lookForShaft` has searched, best first, each fitted by both its edges: where the shaft was half-way through the exposure. None where the two pictures before are
 * not known.
 */
export function findFans(sight: ShaftSight): readonly FittedCandidate[] {
  const { work, change, hands, tuning } = sight;
  if (change === null || !compareChange(change)) return [];
  const scale = 2 * work.factor;
  const { x, y, torso } = hands.now;
  const look: FanLook = {
    x: x / scale - 0.5,
    y: y / scale - 0.5,
    torso: torso / scale,
    sdAcross: (angle) => handsSdAcross(hands, angle),
    trust: (column, line) => trustAt(sight, 2 * column + 0.5, 2 * line + 0.5),
  };
  const found: FittedCandidate[] = [];
  for (const fan of takePeaks(sweepFans(change, look, tuning), tuning.fanApart, tuning.fans)) {
    const fit = fitFan(change, look.x, look.y, look.torso, fan, tuning.fanNearest);
    if (fit === null || !isFan(fit, fan, look.torso, sight)) continue;
    if (found.some(({ angle }) => away(angle, fit.angle) < tuning.fanApart / 2)) continue;
    found.push(asCandidate(sight, fan, fit, scale));
  }
  return found;
}

const away = (a: number, b: number): number => Math.abs(wrapAngle(radians(a - b)));

/** How far a place, in working pixels, is trusted to be no limb, 0 to 1; 0 outside of the window. */
function trustAt({ window, marks }: ShaftSight, x: number, y: number): number {
  const column = Math.round(x) - window.centreX + window.half;
  const row = Math.round(y) - window.centreY + window.half;
  const across = 2 * window.half + 1;
  if (column < 0 || row < 0 || column >= across || row >= across) return 0;
  return (marks.free[row * marks.size + column] as number) / 255;
}

/** The strongest, `apart` radians from each other, at most `most`. */
function takePeaks(fans: readonly Fan[], apart: number, most: number): readonly Fan[] {
  const peaks: Fan[] = [];
  for (const fan of [...fans].sort((a, b) => b.evidence - a.evidence)) {
    if (peaks.length === most) break;
    if (peaks.every(({ angle }) => away(angle, fan.angle) >= apart)) peaks.push(fan);
  }
  return peaks;
}

/** Whether both edges are straight, lie where the fan was found, and run apart from about the hands: an arm's or a coat's do not. */
function isFan(fit: FanFit, fan: Fan, torso: number, { tuning }: ShaftSight): boolean {
  return (
    fit.residual <= tuning.fanResidual * torso &&
    fit.support >= tuning.fanSupport &&
    fit.angleSd <= tuning.fanSd &&
    fit.turn >= tuning.fanTurn &&
    fit.meet >= -tuning.fanMeet * torso &&
    away(fit.angle, fan.angle) <= fan.half + tuning.fanApart / 2
  );
}

function asCandidate({ hands, tuning }: ShaftSight, fan: Fan, fit: FanFit, scale: number): FittedCandidate {
  const [cos, sin] = [Math.cos(fit.angle), Math.sin(fit.angle)];
  const [lineX, lineY] = [(fit.x + 0.5) * scale, (fit.y + 0.5) * scale];
  const along = (hands.now.x - lineX) * cos + (hands.now.y - lineY) * sin;
  const angle = wrapAngle(radians(fit.angle));
  return {
    x: lineX + cos * along,
    y: lineY + sin * along,
    angle,
    sweepAngle: angle,
    angleSd: Math.hypot(tuning.fanErrs * fit.angleSd, tuning.fanShare * fit.turn, tuning.fanLeastSd),
    acrossSd: Math.hypot(fit.acrossSd * scale, tuning.fanAcross * hands.now.torso),
    end: fan.end * scale,
    plainEnd: null,
    evidence: fan.evidence,
    novelty: 1,
    rodSeen: false,
    // A head that moves so fast is a smear.
    headHidden: true,
    endHidden: false,
    onLimb: 0,
    fitted: true,
    turned: fit.turn,
  };
}
