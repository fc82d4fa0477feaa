import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import { usualFocalPerShortSide } from "@overcue/shared-geometry/default-camera";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { imagePoint, worldPoint, type Point } from "@overcue/shared-geometry/point";
import { stickEnds, usualLaying } from "@overcue/shared-geometry/station-model";
import { stationLines, type Handed, type StationSettings } from "@overcue/shared-geometry/station";
import type { StickEnd, StickInImage } from "@overcue/shared-geometry/stick-in-image";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { between, gaussian, type Random } from "../../scenes/random.ts";

const degree = Math.PI / 180;
const width = pixels(720);
const height = pixels(1280);

export interface RandomStation {
  readonly settings: StationSettings;
  /** The true camera. */
  readonly camera: Camera;
  readonly sticks: readonly StickInImage[];
}

/**
 * A phone put up as people do (2.5-5 m behind the ball, lens 0.6-1.4 m up, within 0.5 m of the hand line, 8 degrees of yaw, 4 of roll, focal length
 * within 20 % of the usual) before three sticks that were laid by hand. Marks are `markSd` pixels off each way.
 */
export function randomStation(handed: Handed, random: Random, markSd: number, laying = usualLaying): RandomStation {
  const settings = defaultStation("7-iron", handed);
  const position = worldPoint(-between(random, 2.5, 5), 0.55 + between(random, -0.5, 0.5), between(random, 0.6, 1.4));
  const yaw = between(random, -8, 8) * degree;
  const aim = worldPoint(0, position.y - position.x * -Math.tan(yaw), between(random, 0.7, 1.1));
  const camera = lookAtCamera({
    position,
    target: aim,
    roll: radians(between(random, -4, 4) * degree),
    focal: pixels(usualFocalPerShortSide * width * between(random, 0.8, 1.2)),
    width,
    height,
    handed,
  });
  const sticks: StickInImage[] = [];
  for (const line of stationLines) {
    const alongSd = line === "ball-line" ? laying.ballStickAlong : laying.otherStickAlong;
    const laid = [
      gaussian(random) * alongSd,
      gaussian(random) * laying.across,
      gaussian(random) * laying.turn,
    ] as const;
    const ends = stickEnds(line, settings, laid);
    const near = project(camera, ends.near);
    const far = project(camera, ends.far);
    if (!near || !far) continue;
    const stick = clip(near, far);
    if (stick) sticks.push({ line, near: mark(stick.near, random, markSd), far: mark(stick.far, random, markSd) });
  }
  return { settings, camera, sticks };
}

interface Seen {
  readonly at: Point<"image">;
  readonly isEnd: boolean;
}

/** What of a stick is in the picture; null where less than a fifth of it is. */
function clip(near: Point<"image">, far: Point<"image">): { near: Seen; far: Seen } | null {
  const inside = (by: number): boolean => {
    const x = near.x + by * (far.x - near.x);
    const y = near.y + by * (far.y - near.y);
    return x >= 0 && x <= width && y >= 0 && y <= height;
  };
  const parts = Array.from({ length: 101 }, (_, index) => index / 100).filter(inside);
  const first = parts.at(0);
  const last = parts.at(-1);
  if (first === undefined || last === undefined || last - first < 0.2) return null;
  const at = (by: number) => imagePoint(near.x + by * (far.x - near.x), near.y + by * (far.y - near.y));
  return { near: { at: at(first), isEnd: first === 0 }, far: { at: at(last), isEnd: last === 1 } };
}

function mark(seen: Seen, random: Random, sd: number): StickEnd {
  const at = imagePoint(seen.at.x + gaussian(random) * sd, seen.at.y + gaussian(random) * sd);
  return { at, isEnd: seen.isEnd, acrossSd: pixels(sd), alongSd: pixels(sd) };
}
