import { project } from "./camera-project.ts";
import type { Camera } from "./camera.ts";
import { at, throughBlock, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { worldPoint } from "./point.ts";
import { along, dot, normalise, subtract } from "./vector.ts";

/** So much of the shaft beyond the grip shows its direction in the picture, metres. */
const piece = 0.05;

/**
 * How far the shaft is turned in the picture, about the line of sight, from what the answer says, radians: what neither the picture's own error nor the answer's explains.
 * 0 where they do, or where the answer points at the lens. Camera and observation are a right-handed golfer's.
 */
export function turnedInPicture(motion: ShaftMotion, { direction, angleSd }: LiftObservation, camera: Camera): number {
  const beyond = along(motion.grip, motion.toHead, piece);
  const [grip, next] = [project(camera, motion.grip), project(camera, worldPoint(beyond.x, beyond.y, beyond.z))];
  const sight = normalise(subtract(motion.grip, camera.position));
  if (!grip || !next || !sight) return 0;
  const [x, y] = [next.x - grip.x, next.y - grip.y];
  const turn = Math.atan2(x * direction.y - y * direction.x, x * direction.x + y * direction.y);
  const ahead = dot(motion.toHead, sight);
  const across = along(motion.toHead, sight, -ahead);
  const square = dot(across, across);
  if (square < 1e-6) return 0;
  // A small turn w of the shaft turns it in the picture by w . (sight - cot(lean) across / |across|).
  const shows = along(sight, across, -ahead / square);
  const variance = throughBlock(motion.covariance, at.direction, at.direction, shows) + angleSd * angleSd;
  return turn * turn > filterTuning.againstPicture ** 2 * variance ? turn : 0;
}
