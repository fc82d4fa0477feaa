import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import { liftAgain } from "@overcue/client-capture/pipeline/lift-again";
import { liftToWorld, startLift } from "@overcue/client-capture/pipeline/lift-to-world";
import { readBands } from "@overcue/client-capture/pipeline/read-bands";
import { swingSample } from "@overcue/client-capture/pipeline/swing-sample";
import { runSwingClock, startSwingClock } from "@overcue/client-capture/swing/swing-clock";
import { bandAt } from "@overcue/shared-geometry/band-interval";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import { bandSubjectAt, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { headPoint } from "@overcue/shared-geometry/head-point";
import type { Camera } from "@overcue/shared-geometry/camera";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { LayingSpread } from "@overcue/shared-geometry/station-model";
import { dot, normalise, subtract } from "@overcue/shared-geometry/vector";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { namedRandom } from "../../../scenes/random.ts";
import { randomStation } from "../random-station.ts";
import { randomRep, type RandomRep } from "./random-rep.ts";
import { seeRep, type SeenPicture } from "./see-rep.ts";

/** What was read at one checkpoint, against the truth at the same instant. */
export interface RepReadingMeasure {
  readonly checkpoint: CheckpointId;
  /** Metres; null where the read-out was refused. */
  readonly error: number | null;
  readonly sd: number | null;
  readonly decided: boolean;
  readonly right: boolean;
  /** Whether the shaft plainly leans towards or away from the lens and was answered leaning the other way. */
  readonly leanWrong: boolean;
}

export interface RepMeasure {
  readonly rep: RandomRep;
  readonly live: readonly RepReadingMeasure[];
  readonly finished: readonly RepReadingMeasure[];
  /** Of the rep's pictures in which the shaft plainly leans: how many there are, and how many are answered with the other sign, or not at all. */
  readonly leaning: number;
  readonly liveWrong: number;
  readonly liveNone: number;
  readonly finishedWrong: number;
  readonly finishedNone: number;
}

/** A shaft that leans less than this towards or away from the lens has no sign worth telling, radians. */
const plainLean = 0.2;

/** One random rep from its seed, through the stages of the pipeline that lift it: as it happens, and gone over again. Null where the station is refused. */
export function measureRep(seed: number, laying: LayingSpread): RepMeasure | null {
  const handed = Math.floor(seed / 7) % 3 === 1 ? "left" : "right";
  const station = randomStation(handed, namedRandom(seed, "station"), 1, laying);
  const { settings, camera, sticks } = station;
  const solution = solveStation({ sticks, settings, width: camera.width, height: camera.height, laying });
  if (solution.verdict === "refused") return null;
  const through = spreadCamera(solution.camera, solution.covariance);
  const rep = randomRep(seed, settings, namedRandom(seed, "rep"));
  const pictures = [...seeRep(rep, camera, namedRandom(seed, "see"))];

  let lift = startLift;
  let clock = startSwingClock(gripToHead(settings));
  let resting = false;
  const live: (ShaftInWorld | null)[] = [];
  const phases: { resting: boolean }[] = [];
  for (const { t, shaft, body } of pictures) {
    const lifted = liftToWorld(lift, { shaft, body, resting }, through, settings);
    lift = lifted.state;
    live.push(lifted.output);
    const timed = runSwingClock(clock, swingSample(t, shaft, lifted.output, body));
    clock = timed.state;
    resting = timed.output.phase === "still";
    phases.push({ resting });
  }
  const finished = liftAgain(
    pictures.map(({ shaft }) => shaft),
    pictures.map(({ body }, at) => ({ inWorld: body, resting: phases[at]?.resting ?? false })),
    through,
    settings,
  );
  const { leaning, wrong: liveWrong, none: liveNone } = judgeLeans(rep, pictures, live, camera);
  const { wrong: finishedWrong, none: finishedNone } = judgeLeans(rep, pictures, finished, camera);
  return {
    rep,
    live: readCheckpoints(rep, pictures, live, camera, settings),
    finished: readCheckpoints(rep, pictures, finished, camera, settings),
    leaning,
    liveWrong,
    liveNone,
    finishedWrong,
    finishedNone,
  };
}

function readCheckpoints(
  rep: RandomRep,
  pictures: readonly SeenPicture[],
  shafts: readonly (ShaftInWorld | null)[],
  camera: Camera,
  settings: StationSettings,
): RepReadingMeasure[] {
  return rep.motion.checkpoints.flatMap(({ checkpoint, t }): RepReadingMeasure[] => {
    const subject = bandSubjectAt[checkpoint];
    const at = pictures.findIndex((picture) => picture.t >= t);
    const picture = pictures[at];
    if (subject === null || picture === undefined) return [];
    const truth = truePlace(picture, settings, subject);
    if (truth === null) return [];
    const shaft = shafts[at] ?? null;
    const reading = placeReadOf(readBands(shaft, { settings, camera }, checkpoint), subject);
    const decided = reading.defined && reading.band.decided;
    return [
      {
        checkpoint,
        error: reading.defined ? reading.y - truth : null,
        sd: reading.defined ? reading.sdY : null,
        decided,
        right: reading.defined && reading.band.decided && reading.band.band === bandAt(truth, settings),
        leanWrong: shaft !== null && leanSign(picture, shaft, camera) < 0,
      },
    ];
  });
}

function truePlace(
  { truth }: SeenPicture,
  settings: StationSettings,
  subject: "butt-point" | "head-point",
): number | null {
  if (subject === "head-point") return headPoint(truth, settings).y;
  const butt = buttPoint(truth);
  return butt.ok ? butt.point.y : null;
}

function judgeLeans(
  rep: RandomRep,
  pictures: readonly SeenPicture[],
  shafts: readonly (ShaftInWorld | null)[],
  camera: Camera,
): { leaning: number; wrong: number; none: number } {
  let leaning = 0;
  let wrong = 0;
  let none = 0;
  pictures.forEach((picture, at) => {
    if (rep.motion.repAt(picture.t / 1000) === null) return;
    const shaft = shafts[at] ?? null;
    const sign = leanSign(picture, shaft ?? { ...picture.truth }, camera);
    if (sign === 0) return;
    leaning++;
    if (shaft === null) none++;
    else if (sign < 0) wrong++;
  });
  return { leaning, wrong, none };
}

/** 1 where the answer leans as the truth does, -1 where it plainly leans the other way, 0 where the truth has no plain lean. */
function leanSign({ truth }: SeenPicture, shaft: Pick<ShaftInWorld, "toHead">, camera: Camera): -1 | 0 | 1 {
  const half = { x: 0.4 * truth.toHead.x, y: 0.4 * truth.toHead.y, z: 0.4 * truth.toHead.z };
  const middle = { x: truth.grip.x + half.x, y: truth.grip.y + half.y, z: truth.grip.z + half.z };
  const sight = normalise(subtract(middle, camera.position));
  if (!sight) return 0;
  const really = Math.asin(dot(truth.toHead, sight));
  const told = Math.asin(Math.max(-1, Math.min(1, dot(shaft.toHead, sight))));
  if (Math.abs(really) < plainLean) return 0;
  return really * told < 0 ? -1 : 1;
}
