import type { Camera } from "@overcue/shared-geometry/camera";
import { usualFocalPerShortSide } from "@overcue/shared-geometry/default-camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { landmarkIndex, type Body } from "./body.ts";

/** Ankle joint above the ground and behind the toe line, metres (from memory, no source). */
const ankleHeight = 0.08;
const ankleBehindToes = 0.2;

/** A lens that the feet put outside of these heights is tilted rather than that low or that high, metres. */
const lowestLens = 0.3;
const highestLens = 2;
const usualLens = 1;

/**
 * A camera guessed from the golfer's size and feet where no station was solved: the picture's scale comes from the pose model's own metres,
 * the aim is taken as level and along the target line, the focal length as usual for phones. Good enough to tell a rep's
 * parts apart; what is read on the ground through it stays marked uncalibrated.
 * Null where too little of the body was found to have a size.
 */
export function cameraFromBody(
  body: Body,
  width: number,
  height: number,
  settings: Pick<StationSettings, "handed" | "toeLine">,
): Camera | null {
  const scale = pixelsPerMetre(body);
  const left = body.landmarks[landmarkIndex.leftAnkle];
  const right = body.landmarks[landmarkIndex.rightAnkle];
  if (scale === null || left === undefined || right === undefined) return null;
  const focal = usualFocalPerShortSide * Math.min(width, height);
  const depth = focal / scale;
  const ankleX = (left.x + right.x) / 2;
  const ankleY = (left.y + right.y) / 2;
  const across = settings.handed === "left" ? width / 2 - ankleX : ankleX - width / 2;
  const y = settings.toeLine + ankleBehindToes + across / scale;
  const levelLens = ankleHeight + (ankleY - height / 2) / scale;
  const tilted = levelLens < lowestLens || levelLens > highestLens;
  const z = tilted ? usualLens : levelLens;
  // A tilted camera looks at the height that puts the ankles where they were seen.
  const targetZ = tilted ? ankleHeight + (ankleY - height / 2) / scale : z;
  return lookAtCamera({
    position: worldPoint(-depth, y, z),
    target: worldPoint(0, y, targetZ),
    roll: radians(0),
    focal: pixels(focal),
    width: pixels(width),
    height: pixels(height),
    handed: settings.handed,
  });
}

/** Least-squares scale between the landmarks in the picture and the model's metres seen along the camera's axis; null for too few. */
export function pixelsPerMetre(body: Body): number | null {
  const pairs = body.landmarks.flatMap((landmark, index) => {
    const world = body.world[index];
    return world !== undefined && index >= landmarkIndex.leftShoulder && landmark.visibility > 0.4
      ? [{ u: landmark.x, v: landmark.y, x: world.x, y: world.y }]
      : [];
  });
  if (pairs.length < 6) return null;
  const mean = (of: (pair: (typeof pairs)[number]) => number): number =>
    pairs.reduce((sum, pair) => sum + of(pair), 0) / pairs.length;
  const [u, v, x, y] = [mean((p) => p.u), mean((p) => p.v), mean((p) => p.x), mean((p) => p.y)];
  let together = 0;
  let alone = 0;
  for (const pair of pairs) {
    together += (pair.u - u) * (pair.x - x) + (pair.v - v) * (pair.y - y);
    alone += (pair.x - x) ** 2 + (pair.y - y) ** 2;
  }
  const scale = together / alone;
  return Number.isFinite(scale) && scale > 1 ? scale : null;
}
