import type { BodyInWorld } from "@overcue/client-capture/pipeline/body-in-world";
import type { DemoPose } from "@overcue/client-capture/demo-motion/demo-pose";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { groundPoint, imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import {
  metres,
  milliseconds,
  pixels,
  radians,
  radiansPerSecond,
  type Milliseconds,
} from "@overcue/shared-geometry/units";
import { clubHead } from "@overcue/shared-geometry/head-point";
import { between, gaussian, type Random } from "../../../scenes/random.ts";
import { startWander, wander } from "../../../scenes/session/wander.ts";
import { statedNoise } from "../see-shaft.ts";
import type { RandomRep } from "./random-rep.ts";

/** What tracker and pose would say of one picture, and what was true. */
export interface SeenPicture {
  readonly t: Milliseconds;
  readonly shaft: ShaftInImage;
  readonly body: BodyInWorld;
  readonly truth: NonNullable<DemoPose["club"]>;
}

/** Errors of a picture that last to the next ones: half of the variance for 70 ms, as the simulated tracker of the sessions errs. */
const trackerErrors = { memoryMs: 70, freshShare: 0.5 };
/** Depth: most of it stays the same through a rep, the rest wanders as poses do. */
const depthBiasShare = 0.7;
const poseErrors = { memoryMs: 350, freshShare: 0 };
/** How far before the club's end the line ends, metres, the same all rep long: common practice, no source. */
const lineEnds = { before: 0.02, sd: 0.012 };
/** Shares of pictures: lost one at a time; in which a gap or a stretch without head end begins; tracked wrongly. */
const lostShare = 0.03;
const gapsPerSecond = 0.5;
const headlessPerSecond = 0.4;
const wrongShare = 0.01;
/** A shaft seen shorter than these, pixels of 1280, is mostly or nearly always lost. */
const shortShaft = 64;
const shortestShaft = 32;

/** A whole rep as it would be tracked: errors as `statedNoise` says, drop-outs, stretches without a head end and a few wrong tracks that say nothing of it. */
export function* seeRep(rep: RandomRep, camera: Camera, random: Random): Generator<SeenPicture> {
  const step = 1000 / rep.framesPerSecond;
  const { station } = rep.motion.plan.golfer;
  // The line that is seen ends where the head begins.
  const before = lineEnds.before + lineEnds.sd * gaussian(random);
  const really = { clubLength: metres(station.clubLength - before + gaussian(random) * statedNoise.length) };
  const depthBias = Math.sqrt(depthBiasShare) * statedNoise.depth * gaussian(random);
  const off = startWander(["angle", "across", "grip", "head"], trackerErrors, random);
  const slow = startWander(["depth", "shoulder", "thigh"], poseErrors, random);
  let gapUntil = -1;
  let headlessUntil = -1;
  let wrongUntil = -1;
  let wrongBy = 0;
  for (let t = 0; t <= rep.motion.duration * 1000; t += step) {
    wander(off, step, trackerErrors, random);
    wander(slow, step, poseErrors, random);
    const { body, club } = rep.motion.at(t / 1000);
    if (club === null) continue;
    if (random() < (gapsPerSecond * step) / 1000) gapUntil = t + between(random, 50, 150);
    if (random() < (headlessPerSecond * step) / 1000) headlessUntil = t + between(random, 100, 600);
    if (random() < wrongShare / 2) {
      wrongUntil = t + between(random, 0, 3) * step;
      wrongBy = (random() < 0.5 ? -1 : 1) * between(random, 0.3, 1.5);
    }
    const grip = project(camera, club.grip);
    const head = project(camera, clubHead(club, really));
    const depthOff = depthBias + Math.sqrt(1 - depthBiasShare) * statedNoise.depth * slow.value("depth");
    const handsX = club.grip.x + depthOff;
    const seenBody: BodyInWorld = {
      feet: groundPoint((body.leadAnkle.x + body.trailAnkle.x) / 2, (body.leadAnkle.y + body.trailAnkle.y) / 2),
      handsX: { value: handsX, sd: statedNoise.depth },
      hands: { place: worldPoint(handsX, club.grip.y, club.grip.z), sd: 0.04 },
      leadShoulderZ: { value: body.leadShoulder.z + 0.03 * slow.value("shoulder"), sd: 0.04 },
      trailThighX: { value: (body.trailHip.x + body.trailKnee.x) / 2 + 0.05 * slow.value("thigh"), sd: 0.06 },
    };
    const length = grip && head ? Math.hypot(head.x - grip.x, head.y - grip.y) : 0;
    const wrong = t <= wrongUntil ? wrongBy : 0;
    const lostBy = random();
    const lostOdds = length < shortestShaft ? 0.97 : length < shortShaft ? 0.5 : lostShare;
    const at = { t: milliseconds(t), body: seenBody, truth: club };
    if (!grip || !head || !inside(grip, camera) || t <= gapUntil || lostBy < lostOdds) {
      yield {
        ...at,
        shaft: { status: "lost", t: milliseconds(t), reason: length < shortShaft ? "end-on" : "no-line-found" },
      };
      continue;
    }
    const away = Math.hypot(
      club.grip.x - camera.position.x,
      club.grip.y - camera.position.y,
      club.grip.z - camera.position.z,
    );
    const placeSd = (statedNoise.place * camera.focal) / away;
    const angle = Math.atan2(head.y - grip.y, head.x - grip.x) + statedNoise.angle * off.value("angle") + wrong;
    const direction = { x: Math.cos(angle), y: Math.sin(angle) };
    const across = placeSd * off.value("across");
    const place = (along: number) =>
      imagePoint(
        grip.x + along * direction.x - across * direction.y,
        grip.y + along * direction.y + across * direction.x,
      );
    const end = place(length + placeSd * off.value("head"));
    const headSeen = t > headlessUntil && inside(end, camera);
    yield {
      ...at,
      shaft: {
        status: "tracked",
        t: milliseconds(t),
        grip: place(placeSd * off.value("grip")),
        head: headSeen ? end : null,
        angle: wrapAngle(radians(angle)),
        sd: radians(statedNoise.angle),
        angularRate: radiansPerSecond(0),
        offsetSd: pixels(placeSd),
        headSd: headSeen ? pixels(placeSd) : null,
        rodSeen: false,
      },
    };
  }
}

const inside = ({ x, y }: { x: number; y: number }, { width, height }: Camera): boolean =>
  x >= 0 && y >= 0 && x < width && y < height;
