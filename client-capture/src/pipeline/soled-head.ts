import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { ray } from "@overcue/shared-geometry/camera-ray";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { imagePoint, worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { along, normalise, subtract } from "@overcue/shared-geometry/vector";

/** The head of a soled club is this near to the ground, metres: a teed driver and a misjudged depth included. */
const groundWithin = 0.07;

interface ShaftLine {
  readonly grip: Point<"image">;
  readonly angle: number;
}

/**
 * Where the head of a club that rests at the ball is in the picture: on the shaft's line, at the club's length, as far along the target line as the
 * hands. (Hands ahead of the ball by a hand's breadth turn the shaft by 6 degrees: common practice, no source.)
 * Null where the club so laid would not reach the ground, or would go through it: it does not rest there.
 */
export function soledHead(
  { grip, angle }: ShaftLine,
  handsX: number,
  camera: Camera,
  settings: StationSettings,
): Point<"image"> | null {
  const atHands = onPlane(camera, grip, handsX);
  const ahead = onPlane(camera, imagePoint(grip.x + 20 * Math.cos(angle), grip.y + 20 * Math.sin(angle)), handsX);
  const toHead = atHands && ahead && normalise(subtract(ahead, atHands));
  if (!toHead) return null;
  const head = along(atHands, toHead, gripToHead(settings));
  return Math.abs(head.z) <= groundWithin ? project(camera, worldPoint(head.x, head.y, head.z)) : null;
}

/** The point of a line of sight with that x; null where the line of sight runs nearly square to the target line. */
function onPlane(camera: Camera, at: Point<"image">, x: number): Point<"world"> | null {
  const { origin, direction } = ray(camera, at);
  if (Math.abs(direction.x) < 0.05) return null;
  const place = along(origin, direction, (x - origin.x) / direction.x);
  return worldPoint(place.x, place.y, place.z);
}
