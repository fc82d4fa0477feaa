import { bandAt, bandIntervals } from "@overcue/shared-geometry/band-interval";
import type { BandDecision } from "@overcue/shared-geometry/bands";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { bandSubjectAt, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { headPoint } from "@overcue/shared-geometry/head-point";
import { liftShaft, type ExpectedDirection } from "@overcue/shared-geometry/lift-shaft";
import { readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import { usualLaying } from "@overcue/shared-geometry/station-model";
import type { Handed } from "@overcue/shared-geometry/station";
import { normalise } from "@overcue/shared-geometry/vector";
import { gaussian, namedRandom, type Random } from "../../scenes/random.ts";
import { drawLine } from "./draw-line.ts";
import { randomShaft, type TrueShaft } from "./random-shaft.ts";
import { randomStation } from "./random-station.ts";
import { seeShaft, statedNoise } from "./see-shaft.ts";

/** How well the motion before knows the shaft's direction, radians. The filter over a rep is tighter than this at every checkpoint. */
const motionSd = (10 * Math.PI) / 180;

export interface BandMeasure {
  readonly error: number;
  readonly sd: number;
  readonly decision: BandDecision;
  readonly right: boolean;
  /** Metres from the truth to the nearest boundary. */
  readonly toBoundary: number;
  readonly drawnError: number;
  readonly drawnRight: boolean;
}

export type SceneMeasure =
  | { readonly solved: false; readonly reason: string }
  | {
      readonly solved: true;
      readonly verdict: string;
      readonly cameraError: number;
      readonly checkpoint: CheckpointId;
      readonly band: BandMeasure | null;
      /** Errors in their own standard errors, for coverage. */
      readonly inSds: readonly { readonly name: string; readonly z: number }[];
      readonly undefinedReason: string | null;
    };

/** One random scene from its seed: a station solved from its marks, a shaft lifted through it, its read-outs against the truth. */
export function measureScene(
  seed: number,
  checkpoint: CheckpointId,
  handed: Handed,
  markSd = 1,
  laying = usualLaying,
): SceneMeasure {
  const station = randomStation(handed, namedRandom(seed, "station"), markSd, laying);
  const { settings, camera, sticks } = station;
  const solution = solveStation({ sticks, settings, width: camera.width, height: camera.height, laying });
  if (solution.verdict === "refused") return { solved: false, reason: solution.reason };
  const random = namedRandom(seed, "shaft");
  const shaft = randomShaft(checkpoint, random);
  const seen = seeShaft(camera, settings, shaft, statedNoise, random);
  if (!seen) return { solved: false, reason: "not-in-front" };
  const expected = expectByMotion(shaft, random);
  const lift = liftShaft(spreadCamera(solution.camera, solution.covariance), seen, settings, expected);
  if (!lift.ok) return { solved: false, reason: lift.reason };
  const [lifted] = lift.candidates;
  const readOuts = readOutsOf(lifted, settings, checkpoint);

  const subject = bandSubjectAt[checkpoint] === "butt-point" ? "buttPoint" : "headPoint";
  const reading = readOuts[subject];
  const truth = truthOf(shaft, settings, subject);
  const drawn = drawLine(seen, settings, camera);
  const drawnY: number | null = subject === "buttPoint" ? drawn.butt : drawn.head;
  const inSds: { name: string; z: number }[] = [];
  if (reading.defined && truth !== null) inSds.push({ name: subject, z: (reading.y - truth) / reading.sdY });
  if (readOuts.handHeight.defined) {
    inSds.push({ name: "handHeight", z: (readOuts.handHeight.value - shaft.grip.z) / readOuts.handHeight.sd });
  }
  if (readOuts.elevation.defined) {
    const { value, sd } = readOuts.elevation;
    inSds.push({ name: "elevation", z: (value - Math.asin(shaft.toHead.z)) / sd });
  }
  const cameraError = Math.hypot(
    solution.camera.position.x - camera.position.x,
    solution.camera.position.y - camera.position.y,
    solution.camera.position.z - camera.position.z,
  );
  return {
    solved: true,
    verdict: solution.verdict,
    cameraError,
    checkpoint,
    inSds,
    undefinedReason: reading.defined ? null : reading.reason,
    band:
      reading.defined && truth !== null
        ? {
            error: Math.abs(reading.y - truth),
            sd: reading.sdY,
            decision: reading.band,
            right: reading.band.decided && reading.band.band === bandAt(truth, settings),
            toBoundary: nearestBoundary(truth, settings),
            drawnError: drawnY === null ? Infinity : Math.abs(drawnY - truth),
            drawnRight: drawnY !== null && bandAt(drawnY, settings) === bandAt(truth, settings),
          }
        : null,
  };
}

function truthOf(
  shaft: TrueShaft,
  settings: Parameters<typeof headPoint>[1],
  subject: "buttPoint" | "headPoint",
): number | null {
  if (subject === "headPoint") return headPoint(shaft, settings).y;
  const butt = buttPoint(shaft);
  return butt.ok ? butt.point.y : null;
}

function nearestBoundary(y: number, layout: Parameters<typeof bandIntervals>[0]): number {
  return Math.min(...bandIntervals(layout).flatMap(({ from, to }) => [Math.abs(y - from), Math.abs(y - to)]));
}

/** The direction that the motion before would tell. */
function expectByMotion({ toHead }: TrueShaft, random: Random): ExpectedDirection {
  const known = normalise({
    x: toHead.x + gaussian(random) * motionSd,
    y: toHead.y + gaussian(random) * motionSd,
    z: toHead.z + gaussian(random) * motionSd,
  });
  return { toHead: known ?? toHead, sd: motionSd };
}
