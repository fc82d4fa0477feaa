import { landmarkIndex, type Body } from "@overcue/client-capture/pipeline/body";
import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { milliseconds } from "@overcue/shared-geometry/units";
import type { Vector } from "@overcue/shared-geometry/vector";
import { bodyPieces, type Dress } from "../golfer/body-pieces.ts";
import { gaussian, type Random } from "../random.ts";
import { pixelsPerMetre, see, seeDirection, type View, type ViewDirection } from "../view.ts";
import { hiddenBehind } from "./hidden-behind.ts";
import { landmarkPlaces } from "./landmark-places.ts";
import type { PoseErrors } from "./pose-errors.ts";

const landmarkCount = 33;
const handLandmarks: ReadonlySet<number> = new Set([15, 16, 17, 18, 19, 20, 21, 22]);

/** Answers of a simulated pose model. `answerAt(t)`: the newest one that has arrived by `t` (milliseconds), or null before the first. */
export interface PoseSimulator {
  answerAt(t: number): Body | null;
}

/**
 * A pose model that errs like the real one: its errors wander as the hands go, hidden wrists are far off and say so by low visibility,
 * and each answer comes late. A wrist and its fingers err together.
 */
export function simulatePoses(
  motion: DemoMotion,
  view: View,
  dress: Dress,
  errors: PoseErrors,
  fromMs: number,
  random: Random,
): PoseSimulator {
  const step = 1000 / errors.perSecond;
  const wander = Float64Array.from({ length: landmarkCount * 3 }, () => gaussian(random));
  let taken = fromMs - step * random();
  let waiting: Body[] = [];
  let newest: Body | null = null;
  const take = (t: number): Body => {
    const way = handsWay(motion, t - step, t);
    const keep = Math.exp(-step / errors.memoryMs - way / errors.memoryMetres);
    for (let index = 0; index < wander.length; index++) {
      wander[index] = keep * (wander[index] ?? 0) + Math.sqrt(1 - keep * keep) * gaussian(random);
    }
    return poseOf(motion, view, dress, errors, t, wander, random);
  };
  return {
    answerAt(t) {
      while (taken <= t) {
        waiting.push(take(taken));
        taken += step * (0.85 + 0.3 * random());
      }
      for (const body of waiting) if (body.t + errors.delayMs <= t) newest = body;
      waiting = waiting.filter((body) => body.t + errors.delayMs > t);
      return newest;
    },
  };
}

/** How far the hands go from one moment to another, metres. */
function handsWay(motion: DemoMotion, fromMs: number, toMs: number): number {
  const from = motion.at(Math.max(0, fromMs) / 1000).body.trailWrist;
  const to = motion.at(Math.max(0, toMs) / 1000).body.trailWrist;
  return Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
}

function poseOf(
  motion: DemoMotion,
  view: View,
  dress: Dress,
  errors: PoseErrors,
  t: number,
  wander: Float64Array,
  random: Random,
): Body {
  const pose = motion.at((t - errors.smoothingMs) / 1000);
  const isHidden = hiddenBehind(view, bodyPieces(pose, dress));
  const places = landmarkPlaces(pose, view.camera.handed);
  const leftHip = places[landmarkIndex.leftHip] ?? { x: 0, y: 0, z: 0 };
  const rightHip = places[landmarkIndex.rightHip] ?? leftHip;
  const middle = { x: (leftHip.x + rightHip.x) / 2, y: (leftHip.y + rightHip.y) / 2, z: (leftHip.z + rightHip.z) / 2 };
  const fromHips = (place: Vector): ViewDirection =>
    seeDirection(view, { x: place.x - middle.x, y: place.y - middle.y, z: place.z - middle.z });
  const depthOf = (index: number): number => fromHips(places[index] ?? middle)[2];
  const shoulders = (depthOf(landmarkIndex.leftShoulder) + depthOf(landmarkIndex.rightShoulder)) / 2;
  const landmarks: Body["landmarks"][number][] = [];
  const world: Body["world"][number][] = [];
  places.forEach((place, index) => {
    const seen = see(view, place);
    const hidden = isHidden(seen);
    const hand = handLandmarks.has(index);
    const sd = hand ? (hidden ? errors.hiddenWrist : errors.wrist) : hidden ? 2 * errors.joint : errors.joint;
    const source = hand ? landmarkIndex.leftWrist + ((index - landmarkIndex.leftWrist) % 2) : index;
    const off = (axis: number): number =>
      sd * (wander[source * 3 + axis] ?? 0) + (hand ? errors.jitter : errors.jitter / 2) * gaussian(random);
    const size = pixelsPerMetre(view, seen.depth);
    const [dx, dy, dz] = [off(0), off(1), off(2)];
    const visibility = hidden ? 0.02 + 0.48 * random() ** 2 : 0.85 + 0.145 * random();
    landmarks.push({ x: seen.x + size * dx, y: seen.y + size * dy, visibility });
    const [x, y, z] = fromHips(place);
    const reached = hand ? shoulders + errors.reach * (z - shoulders) : z;
    world.push({ x: x + dx, y: y + dy, z: reached + 1.5 * dz });
  });
  const scored = [11, 12, 15, 16, 23, 24].map((index) => landmarks[index]?.visibility ?? 0);
  return {
    t: milliseconds(t),
    landmarks,
    world,
    score: scored.reduce((sum, value) => sum + value, 0) / scored.length,
  };
}
