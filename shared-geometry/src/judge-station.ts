import { spreadCamera } from "./camera-spread.ts";
import { project } from "./camera-project.ts";
import type { Camera } from "./camera.ts";
import { worldPoint } from "./point.ts";
import { buttSdFromCamera } from "./butt-sd-from-camera.ts";
import type { StationFit, StationInput } from "./station-fit.ts";
import { laidAt, type LayingSpread } from "./station-model.ts";
import type { StationCaution, StationRefusal } from "./station-verdict.ts";

export interface StationJudgement {
  readonly refusal: StationRefusal | null;
  readonly verdict: "good" | "usable" | "refused";
  readonly caution: StationCaution | null;
  /** Root mean square miss of the sticks' marks. */
  readonly residualPixels: number;
  /** The same on the ground at the ball. */
  readonly residualMillimetres: number;
  /** What the camera alone adds to the standard error of a usual butt point's y, metres. */
  readonly buttSd: number;
  /** Squared sds of the whole fit: of marks, of how the sticks were laid, of focal length and tilt. */
  readonly misfit: number;
}

/** The limits of the verdict. Lower: stricter. */
export const stationLimits = {
  goodMillimetres: 8,
  usableMillimetres: 25,
  goodButtSd: 0.015,
  usableButtSd: 0.04,
  /** Metres. */
  lowestLens: 0.25,
  nearestBehind: 0.8,
  /** A stick turned by more than this (radians) is not parallel; 3 degrees. */
  greatestTurn: (3 * Math.PI) / 180,
  /** A stick farther than this (metres) from its stated place contradicts it. */
  greatestOff: 0.05,
  /** Squared sds a stick over which a fit is looked into, and over which it is called rough. */
  greatestMisfit: 20,
  /** Sds by which the focal length may leave what the lens is said to have; a wrong stick length shows here first. */
  greatestFocalOff: 3,
  roughMisfit: 8,
} as const;

/** For looking into a bad fit: sticks that may lie anyhow. */
const anyhow: LayingSpread = { ballStickAlong: 0.5, otherStickAlong: 0.5, across: 0.3, turn: 0.3 };

interface Question {
  readonly input: StationInput;
  readonly fit: StationFit;
  /** The fit to the picture seen in a mirror. */
  readonly reverse: () => StationFit;
  readonly refit: (input: StationInput) => StationFit;
}

/** The verdict over a fitted station, with the first reason that applies. */
export function judgeStation(question: Question): StationJudgement {
  const { input, fit, reverse } = question;
  const cost = fit.leastSquares.cost / input.sticks.length;
  const { camera, covariance } = fit;
  const residualPixels = rootMeanSquarePixels(input, fit);
  const residualMillimetres = (1000 * residualPixels) / pixelsPerMetreAtBall(camera);
  const buttSd = covariance ? buttSdFromCamera(spreadCamera(camera, covariance)) : Infinity;
  const judged = { residualPixels, residualMillimetres, buttSd, misfit: fit.leastSquares.cost };
  const refuse = (refusal: StationRefusal): StationJudgement => ({
    ...judged,
    refusal,
    verdict: "refused",
    caution: null,
  });

  const limits = stationLimits;
  if (cost > limits.greatestMisfit) {
    if (reverse().leastSquares.cost / input.sticks.length < Math.min(limits.greatestMisfit, cost / 4))
      return refuse("mirrored");
    return refuse(lookInto(question));
  }
  if (!fit.leastSquares.converged || !covariance) return refuse("does-not-fit");
  if (fit.focalOff > limits.greatestFocalOff) return refuse("does-not-fit");
  if (camera.position.z < limits.lowestLens) return refuse("camera-on-ground");
  const looksAlong = camera.rotation[6] > Math.cos(Math.PI / 4);
  if (camera.position.x > -limits.nearestBehind || !looksAlong) return refuse("not-behind-golfer");
  if (residualMillimetres > limits.usableMillimetres) return refuse("does-not-fit");
  if (!(buttSd <= limits.usableButtSd)) return refuse("too-short");
  const rough = residualMillimetres > limits.goodMillimetres || cost > limits.roughMisfit;
  const wide = buttSd <= limits.goodButtSd ? null : input.sticks.length < 3 ? "two-spread-wide" : "spread-wide";
  const caution = rough ? "marks-rough" : wide;
  return { ...judged, refusal: null, verdict: caution ? "usable" : "good", caution };
}

/** Why a fit is bad: what would have to give for it to be good. */
function lookInto({ input, refit }: Pick<Question, "input" | "refit">): StationRefusal {
  const { greatestMisfit, greatestOff, greatestTurn } = stationLimits;
  const fits = (fit: StationFit): boolean => fit.leastSquares.cost / input.sticks.length <= greatestMisfit;
  if (input.gravity && fits(refit({ ...input, gravity: null }))) return "tilt-contradicts";
  const loose = refit({ ...input, laying: anyhow });
  if (!fits(loose)) return "does-not-fit";
  const laid = input.sticks.map((_, index) => laidAt(loose.leastSquares.parameters, index));
  const turns = laid.map(([, , turn]) => turn);
  if (Math.max(...turns) - Math.min(...turns) > greatestTurn) return "not-parallel";
  const across = laid.map(([, off]) => off);
  if (Math.max(...across) - Math.min(...across) > greatestOff) return "distances-contradict";
  return "does-not-fit";
}

function rootMeanSquarePixels(input: StationInput, fit: StationFit): number {
  let sum = 0;
  let count = 0;
  for (const [index, { near, far }] of input.sticks.entries()) {
    const [nearAcross = 0, nearAlong = 0, farAcross = 0, farAlong = 0] = fit.leastSquares.residuals.slice(4 * index);
    sum += (nearAcross * near.acrossSd) ** 2 + (nearAlong * near.alongSd) ** 2;
    sum += (farAcross * far.acrossSd) ** 2 + (farAlong * far.alongSd) ** 2;
    count += 2 + Number(near.isEnd) + Number(far.isEnd);
  }
  return Math.sqrt(sum / count);
}

function pixelsPerMetreAtBall(camera: Camera): number {
  const ball = project(camera, worldPoint(0, 0, 0));
  const beside = project(camera, worldPoint(0, 0.1, 0));
  return ball && beside ? 10 * Math.hypot(beside.x - ball.x, beside.y - ball.y) : Number.NaN;
}
