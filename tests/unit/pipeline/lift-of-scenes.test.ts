import { placeReadOf } from "@overcue/shared-geometry/place-read-at";
import { describe, expect, it } from "vitest";
import { bodyInWorld, startBody } from "@overcue/client-capture/pipeline/body-in-world";
import { liftAgain, type BesideShaft } from "@overcue/client-capture/pipeline/lift-again";
import { readBands } from "@overcue/client-capture/pipeline/read-bands";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { buttPoint } from "@overcue/shared-geometry/butt-point";
import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { headPoint } from "@overcue/shared-geometry/head-point";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { imagePoint } from "@overcue/shared-geometry/point";
import { milliseconds, pixels, radians, radiansPerSecond } from "@overcue/shared-geometry/units";
import { sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import { simulatePoses } from "../../scenes/pose/simulate-poses.ts";
import { namedRandom } from "../../scenes/random.ts";
import { truthInPicture } from "../../scenes/truth-in-picture.ts";

interface Reading {
  readonly checkpoint: string;
  readonly error: number;
  readonly sd: number;
}

/** So far before the club's end the line that is seen of it ends, metres. */
const lineEndsBefore = 0.02;

/** Whether the head moves by less than a centimetre within a third of a second. */
function standsStill(motion: DemoMotion, t: number): boolean {
  const [before, now] = [motion.at(Math.max(0, t - 333) / 1000).club, motion.at(t / 1000).club];
  if (!before || !now) return false;
  const { head } = now;
  return Math.hypot(head.x - before.head.x, head.y - before.head.y, head.z - before.head.z) < 0.01;
}

/** A scene's rep, its shaft seen just where the picture shows it, its body as the simulated pose model says; read at the checkpoints. */
function readScene(condition: ConditionName, seed: number): Reading[] {
  const scene = sceneOf(condition, seed);
  const motion = demoMotion(scene.plan);
  const { camera } = scene;
  const { station } = scene.plan.golfer;
  const view = { camera, shiftX: 0, shiftY: 0 };
  const poses = simulatePoses(motion, view, scene.dress, scene.pose, scene.fromMs, namedRandom(seed, "poses"));
  const setOff = motion.checkpoints[0]?.t ?? 0;
  let body = startBody;
  const shafts: ShaftInImage[] = [];
  const beside: BesideShaft[] = [];
  for (let t = scene.fromMs; t < scene.toMs; t += 1000 / scene.framesPerSecond) {
    const truth = truthInPicture(motion, view, t, scene.readOutMs, scene.bowAtFullSpeed);
    const pose = poses.answerAt(t);
    const inWorld = pose && bodyInWorld(body, pose, camera, station);
    body = inWorld?.state ?? body;
    beside.push({ inWorld: inWorld?.output ?? null, resting: t < setOff && standsStill(motion, t) });
    if (!truth) throw new Error("no club");
    const { gripInPicture: grip, headInPicture: head } = truth;
    const share = 1 - lineEndsBefore / gripToHead(station);
    const lineEnd = imagePoint(grip.x + share * (head.x - grip.x), grip.y + share * (head.y - grip.y));
    const inside = head.x >= 0 && head.y >= 0 && head.x < camera.width && head.y < camera.height;
    shafts.push({
      status: "tracked",
      t: milliseconds(t),
      grip,
      head: inside ? lineEnd : null,
      angle: truth.angleInPicture,
      sd: radians(0.005),
      angularRate: radiansPerSecond(0),
      offsetSd: pixels(1),
      headSd: inside ? pixels(4) : null,
      rodSeen: false,
    });
  }
  const worlds = liftAgain(shafts, beside, exactCamera(camera), station);
  return motion.checkpoints.flatMap(({ checkpoint, t }) => {
    const subject = bandSubjectAt[checkpoint];
    const at = shafts.findIndex((shaft) => shaft.t >= t);
    const { club } = motion.at((shafts[at]?.t ?? 0) / 1000);
    if (subject === null || !club) return [];
    const butt = buttPoint(club);
    const truth = subject === "head-point" ? headPoint(club, station).y : butt.ok ? butt.point.y : NaN;
    const reading = placeReadOf(readBands(worlds[at] ?? null, { settings: station, camera }, checkpoint), subject);
    return [{ checkpoint, error: reading.defined ? reading.y - truth : NaN, sd: reading.defined ? reading.sdY : NaN }];
  });
}

describe("from the picture's true shaft and a simulated pose to the ground", () => {
  it.each<[ConditionName, number]>([
    ["slow+bare", 1],
    ["slow+rod", 2],
    ["flow 60", 3],
    ["left-handed", 4],
  ])("F2 every checkpoint of %s, seed %i, is read within 6 cm and three of its own sds", (condition, seed) => {
    const readings = readScene(condition, seed);
    expect(readings.map(({ checkpoint }) => checkpoint)).toStrictEqual([
      "takeaway",
      "shaft-level-back",
      "arm-level-back",
      "arm-level-down",
      "shaft-level-down",
    ]);
    for (const { checkpoint, error, sd } of readings) {
      expect(Math.abs(error), checkpoint).toBeLessThan(0.06);
      expect(Math.abs(error) / sd, checkpoint).toBeLessThan(3);
    }
  });
});
