import { milliseconds, radians } from "@overcue/shared-geometry/units";
import { groundPoint, worldPoint, type Point } from "@overcue/shared-geometry/point";
import { demoCamera } from "@overcue/client-capture/demo-motion/demo-camera";
import type { DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { ClubInPicture, SwingSample } from "@overcue/client-capture/swing/swing-sample";
import { project } from "@overcue/shared-geometry/camera-project";
import { gaussian, type Random } from "../scenes/random.ts";

/** One standard deviation of what the stages before the clock would get wrong from picture to picture. */
export interface SampleNoise {
  /** Radians on azimuth and elevation of the shaft. */
  readonly angle: number;
  /** Metres on each axis of the grip. */
  readonly grip: number;
  /** Metres on shoulder and thigh. */
  readonly body: number;
}

export const noNoise: SampleNoise = { angle: 0, grip: 0, body: 0 };

const camera = demoCamera(720, 1280, "right");
const metre = camera.focal / Math.hypot(camera.position.x, camera.position.y, camera.position.z);

/** Where the demo golfer's camera sees it, metres from the ball. */
function fromBall(place: Point<"world">): ClubInPicture["grip"] {
  const [at, ball] = [project(camera, place), project(camera, worldPoint(0, 0, 0))];
  if (at === null || ball === null) throw new Error("the club lies behind the lens");
  return { x: (at.x - ball.x) / metre, y: (at.y - ball.y) / metre };
}

function inPicture(club: { readonly grip: Point<"world">; readonly head: Point<"world"> }): ClubInPicture {
  const [grip, head] = [fromBall(club.grip), fromBall(club.head)];
  return { grip, head, angle: radians(Math.atan2(head.y - grip.y, head.x - grip.x)) };
}

/** What the swing clock would be given of a demonstrated motion by stages that are right but for noise of the stated size. */
export function* trueSamples(
  motion: DemoMotion,
  framesPerSecond: number,
  noise: SampleNoise,
  random: Random,
): Generator<SwingSample> {
  const frames = Math.floor(motion.duration * framesPerSecond);
  const floor = 1e-6;
  for (let frame = 0; frame <= frames; frame++) {
    const seconds = frame / framesPerSecond;
    const { body, club } = motion.at(seconds);
    const t = milliseconds(seconds * 1000);
    const shaken = (value: number, sd: number): number => value + (sd > 0 ? sd * gaussian(random) : 0);
    const grip = club === null ? body.leadHand : club.grip;
    const place = { x: shaken(grip.x, noise.grip), y: shaken(grip.y, noise.grip), z: shaken(grip.z, noise.grip) };
    const elevation = club === null ? 0 : shaken(Math.asin(club.toHead.z), noise.angle);
    const azimuth = club === null ? 0 : shaken(Math.atan2(club.toHead.y, club.toHead.x), noise.angle);
    const covariance = new Array<number>(25).fill(0);
    [0, 6, 12].forEach((k) => (covariance[k] = Math.max(noise.grip, floor) ** 2));
    [18, 24].forEach((k) => (covariance[k] = Math.max(noise.angle, floor) ** 2));
    yield {
      t,
      shaft:
        club === null
          ? null
          : {
              t,
              grip: place,
              toHead: {
                x: Math.cos(elevation) * Math.cos(azimuth),
                y: Math.cos(elevation) * Math.sin(azimuth),
                z: Math.sin(elevation),
              },
              covariance,
            },
      alone: null,
      tracked: club !== null,
      hands: { place, sd: Math.max(noise.grip, floor) },
      leadShoulderZ: { value: shaken(body.leadShoulder.z, noise.body), sd: Math.max(noise.body, floor) },
      trailThighX: {
        value: shaken((body.trailHip.x + body.trailKnee.x) / 2, noise.body),
        sd: Math.max(noise.body, floor),
      },
      inPicture: club === null ? null : inPicture(club),
      feet: groundPoint((body.leadAnkle.x + body.trailAnkle.x) / 2, (body.leadAnkle.y + body.trailAnkle.y) / 2),
    };
  }
}
