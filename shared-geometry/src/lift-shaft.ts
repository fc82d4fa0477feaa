import { assembleShaft } from "./assemble-shaft.ts";
import { exactCamera, type CameraSpread } from "./camera-spread.ts";
import type { Camera } from "./camera.ts";
import { gripToHead } from "./grip-convention.ts";
import { joinSides, leanForSpread, leanPosterior, type LeanSide } from "./lean-posterior.ts";
import { mirrorObservation, type LiftObservation } from "./lift-observation.ts";
import { stepViews } from "./step-views.ts";
import type { StationSettings } from "./station.ts";
import { dot } from "./vector.ts";
import { noErrors, spreadAt, viewShaft, type LiftRefusal, type ShaftView } from "./view-shaft.ts";
import type { Direction, ShaftInWorld } from "./world-shaft.ts";

export type Lift =
  /** Both leans, the head nearer to the camera first; one where the head was not seen, or motion told which way the shaft leans. */
  | { readonly ok: true; readonly candidates: readonly [ShaftInWorld, ...ShaftInWorld[]] }
  | { readonly ok: false; readonly reason: LiftRefusal };

/** Where the motion before says that the shaft points, and one sd of its lean, radians. */
export interface ExpectedDirection {
  readonly toHead: Direction;
  readonly sd: number;
}

/** How well the grip-to-head length is known, metres: the club's stated length. The hands' place on the club is `gripAlongSd`. */
export const lengthSd = 0.005;

/** How far the shaft may lean out of the plane square to the line of sight when nothing tells, one sd, radians. */
export const unseenLeanSd = 0.6;

/**
 * The shaft in the world from one picture. The hands' depth places the grip on its line of sight; the picture's line gives a plane through
 * the lens; the club's length and the head's place give the lean in that plane, up to its sign.
 * The covariance carries every error of the observation and of the camera: linear in all but the lean, whose own distribution is summed up,
 * since it is far from linear where the shaft is square to the line of sight.
 */
export function liftShaft(
  through: Camera | CameraSpread,
  seen: LiftObservation,
  settings: Pick<StationSettings, "clubLength">,
  expected: ExpectedDirection | null = null,
): Lift {
  const spread = "moved" in through ? through : exactCamera(through);
  const observation = spread.camera.handed === "left" ? mirrorObservation(seen, spread.camera.width) : seen;
  const view = viewShaft(spread.upright, observation, noErrors);
  if (typeof view === "string") return refuse(view);
  const steps = stepViews(spread, observation);
  if (typeof steps === "string") return refuse(steps);
  const length = gripToHead(settings);
  const prior = expected && { mean: leanOf(expected.toHead, view), sd: expected.sd };

  if (view.spread === null) {
    const { mean, sd } = prior ?? { mean: 0, sd: unseenLeanSd };
    const side = { mass: 1, mean, variance: sd * sd, missMean: 0, missVariance: 0, missLean: 0 };
    const none = new Array<number>(steps.length).fill(0);
    return { ok: true, candidates: [assembleShaft(observation.t, view, steps, none, side)] };
  }

  const observed = view.spread;
  const lifted = ([-1, 1] as const).map((sign) => {
    const mode = leanForSpread(sign, observed, length, view.distance);
    const miss = ({ spread: at, distance }: ShaftView): number => (at ?? observed) - spreadAt(mode, length, distance);
    const missSteps = steps.map(({ down, up }) => (miss(up) - miss(down)) / 2);
    const byLength = spreadAt(mode, length + lengthSd, view.distance) - spreadAt(mode, length, view.distance);
    const sd = Math.hypot(byLength, ...missSteps) || 1e-9;
    const side = leanPosterior(sign, { spread: observed, sd, length, distance: view.distance, prior });
    return { side, shares: missSteps.map((step) => step / sd), sd };
  });
  const [near, far] = lifted;
  if (!near || !far) return refuse("bad-observation");
  const assemble = ({ side, shares, sd }: typeof near): ShaftInWorld =>
    assembleShaft(observation.t, view, steps, shares, inSds(side, sd));
  if (!prior) return { ok: true, candidates: [assemble(near), assemble(far)] };
  const likelier = near.side.mass > far.side.mass ? near : far;
  return { ok: true, candidates: [assemble({ ...likelier, side: joinSides(near.side, far.side) })] };
}

/** The miss in its own standard deviations. */
function inSds(side: LeanSide, sd: number): LeanSide {
  return {
    ...side,
    missMean: side.missMean / sd,
    missVariance: side.missVariance / (sd * sd),
    missLean: side.missLean / sd,
  };
}

const leanOf = (toHead: Direction, { sight, square }: ShaftView): number =>
  Math.atan2(dot(toHead, sight), dot(toHead, square));

const refuse = (reason: LiftRefusal): Lift => ({ ok: false, reason });
