import { cameraFromHomography } from "./camera-from-homography.ts";
import type { CameraCovariance } from "./camera-spread.ts";
import type { Camera } from "./camera.ts";
import { defaultCamera, usualFocalPerShortSide } from "./default-camera.ts";
import { judgeStation, type StationJudgement } from "./judge-station.ts";
import { fitLeastSquares } from "./least-squares.ts";
import { mirrorPoint } from "./mirror-picture.ts";
import { groundPoint, imagePoint } from "./point.ts";
import { checkStation } from "./check-station.ts";
import { homographyFrom } from "./station-homography.ts";
import {
  cameraParameters,
  lineDistance,
  middleAlong,
  moveCamera,
  stationResiduals,
  stepsFor,
  stickParameters,
  usualLaying,
  type StationPriors,
} from "./station-model.ts";
import type { StationFit, StationInput } from "./station-fit.ts";
import { refusalSentences, type StationRefusal } from "./station-verdict.ts";
import { mirrorStick, stickEndNames, type StickInImage } from "./stick-in-image.ts";
import { pixels } from "./units.ts";

export type StationSolution =
  | ({
      readonly verdict: "good" | "usable";
      readonly camera: Camera;
      readonly covariance: CameraCovariance;
    } & Omit<StationJudgement, "refusal" | "verdict">)
  | {
      readonly verdict: "refused";
      readonly reason: StationRefusal;
      /** What is wrong, as the golfer reads it. */
      readonly sentence: string;
      readonly whatToDo: string;
    };

/** Off by more than this many sds a mark loses weight. */
const robustBeyond = 3;

/** Squared sds a stick under which a fit needs no second start. */
const goodCost = 12;

/**
 * The camera from the sticks of a station: robust least squares over the camera and over how the sticks were laid, begun at the homography
 * of the ends that are seen and at the usual camera, whichever ends lower.
 * Never throws for a bad station: it refuses with one reason of a closed list.
 */
export function solveStation(input: StationInput): StationSolution {
  const early = checkStation(input);
  if (early) return refuse(early);
  const upright = nearEndsFirst(toRightHanded(input));
  const fit = fitStation(upright);
  const judgement = judgeStation({
    input: upright,
    fit,
    reverse: () => fitStation(mirrored(upright)),
    refit: fitStation,
  });
  if (judgement.refusal) return refuse(judgement.refusal);
  const { camera, covariance } = fit;
  if (!covariance || judgement.verdict === "refused") return refuse("does-not-fit");
  const { verdict, caution, residualPixels, residualMillimetres, buttSd, misfit } = judgement;
  return {
    verdict,
    caution,
    camera: { ...camera, handed: input.settings.handed },
    covariance,
    residualPixels,
    residualMillimetres,
    buttSd,
    misfit,
  };
}

/**
 * The best camera for a right-handed golfer's picture. A stick's end that contradicts all the others is taken for a place where a foot hides the
 * rest of it, as long as four ends are left.
 */
function fitStation(input: StationInput): StationFit {
  const whole = fitOnce(input);
  let { sticks } = input;
  let fit = whole;
  for (let round = 0; round < mostHidden && endsOf(sticks) > leastEnds && contradicts(fit); round++) {
    let best: { readonly sticks: readonly StickInImage[]; readonly fit: StationFit } | null = null;
    for (const hidden of withOneHidden(sticks)) {
      const next = fitOnce({ ...input, sticks: hidden });
      if (!best || next.leastSquares.cost < best.fit.leastSquares.cost) best = { sticks: hidden, fit: next };
    }
    if (!best || best.fit.leastSquares.cost > fit.leastSquares.cost * worthHiding) break;
    ({ sticks, fit } = best);
  }
  // Where the rest does not fit either, it is not the ends that are wrong.
  return fit.leastSquares.cost <= goodCost * sticks.length ? fit : whole;
}

/** Hidden ends at most, how many ends must be left, how far off (sds) one must be, and what share of the cost at most may be left without it. */
const mostHidden = 2;
const leastEnds = 4;
const farOff = 3.5;
const worthHiding = 0.5;

const endsOf = (sticks: readonly StickInImage[]): number =>
  sticks.flatMap(({ near, far }) => [near, far]).filter(({ isEnd }) => isEnd).length;

const contradicts = ({ leastSquares }: StationFit): boolean =>
  leastSquares.residuals.some((residual) => Math.abs(residual) > farOff);

/** The sticks with each end in turn taken for hidden. An end too many pulls all the others, so that the farthest off need not be the wrong one. */
function* withOneHidden(sticks: readonly StickInImage[]): Generator<readonly StickInImage[]> {
  for (const [index, stick] of sticks.entries()) {
    for (const end of stickEndNames) {
      if (stick[end].isEnd) yield sticks.with(index, { ...stick, [end]: { ...stick[end], isEnd: false } });
    }
  }
}

function fitOnce(input: StationInput): StationFit {
  const priors = priorsOf(input);
  const { sticks, settings } = input;
  const free = new Array<number>(cameraParameters + stickParameters * sticks.length).fill(0);
  const fitFrom = (base: Camera) => ({
    base,
    leastSquares: fitLeastSquares(free, (parameters) => stationResiduals(base, parameters, sticks, settings, priors), {
      measured: 4 * sticks.length + (priors.ball ? 2 : 0),
      robustBeyond,
      steps: stepsFor(sticks.length),
      mostRounds: 60,
    }),
  });
  const [usual, ...others] = startsFor(input, priors.focal.focal);
  let best = fitFrom(usual);
  for (const start of others) {
    if (best.leastSquares.cost < goodCost * sticks.length) break;
    const next = fitFrom(start);
    if (next.leastSquares.cost < best.leastSquares.cost) best = next;
  }
  const whole = best.leastSquares.covariance;
  const camera = moveCamera(best.base, best.leastSquares.parameters);
  return {
    camera,
    focalOff: Math.abs(Math.log(camera.focal / priors.focal.focal)) / priors.focal.relativeSd,
    covariance: whole && whole.subMatrix(0, cameraParameters - 1, 0, cameraParameters - 1).to1DArray(),
    leastSquares: best.leastSquares,
  };
}

type Starts = [Camera, ...Camera[]];

function startsFor({ sticks, settings, width, height }: StationInput, focal: number): Starts {
  const usual = { ...defaultCamera(width, height, "right"), focal: pixels(focal) };
  const matches = sticks.flatMap(({ line, near, far }) => {
    const y = lineDistance(line, settings);
    const half = settings.stickLength / 2;
    const middle = middleAlong(line, settings.stickLength);
    return [
      { end: near, x: middle - half },
      { end: far, x: middle + half },
    ]
      .filter(({ end }) => end.isEnd)
      .map(({ end, x }) => ({ ground: groundPoint(x, y), image: end.at }));
  });
  const homography = homographyFrom(matches);
  const centre = imagePoint(width / 2, height / 2);
  const seen = homography && cameraFromHomography(homography, { width, height }, centre, pixels(focal));
  return seen ? [seen, usual] : [usual];
}

function priorsOf(input: StationInput): StationPriors {
  return {
    focal: input.focal ?? { focal: usualFocalPerShortSide * Math.min(input.width, input.height), relativeSd: 0.15 },
    gravity: input.gravity ?? null,
    ball: input.ball ?? null,
    laying: input.laying ?? usualLaying,
  };
}

/** Handles dragged the wrong way round: the end nearer to a camera above the ground is the lower one in the picture. */
function nearEndsFirst(input: StationInput): StationInput {
  const inOrder = (stick: StickInImage): StickInImage =>
    stick.near.at.y >= stick.far.at.y ? stick : { ...stick, near: stick.far, far: stick.near };
  return { ...input, sticks: input.sticks.map(inOrder) };
}

/** A left-handed golfer's picture turned into a right-handed one; a right-handed one as it is. */
function toRightHanded(input: StationInput): StationInput {
  return input.settings.handed === "left" ? mirrored(input) : input;
}

function mirrored(input: StationInput): StationInput {
  const { width, ball, gravity } = input;
  return {
    ...input,
    sticks: input.sticks.map((stick) => mirrorStick(stick, width)),
    ball: ball ? { ...ball, at: mirrorPoint(ball.at, width) } : null,
    gravity: gravity ? { ...gravity, down: { ...gravity.down, x: -gravity.down.x } } : null,
  };
}

function refuse(reason: StationRefusal): StationSolution {
  const { wrong, cure } = refusalSentences[reason];
  return { verdict: "refused", reason, sentence: wrong, whatToDo: cure };
}
