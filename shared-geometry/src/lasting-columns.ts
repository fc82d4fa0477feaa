import { project } from "./camera-project.ts";
import type { CameraSpread } from "./camera-spread.ts";
import type { LiftObservation } from "./lift-observation.ts";
import { worldPoint } from "./point.ts";
import { halfWay } from "./shaft-covariance.ts";
import { metres, pixels, radians } from "./units.ts";
import { along, dot } from "./vector.ts";
import { leaning, noErrors, spreadAt, viewShaft, type ShaftView } from "./view-shaft.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** What stays the same through a rep beside the camera, metres: the club from grip to head, one sd of it, and one sd of the hands' depth. */
export interface LastingErrors {
  readonly length: number;
  readonly lengthSd: number;
  readonly depthSd: number;
}

/** One sd of a spread by everything but the camera, as a share of it: what the lean was weighed with. */
const spreadShare = 0.02;

/**
 * What each error that stays the same through a rep does to a shaft (grip x, y, z, azimuth, elevation), the picture held as it is: the camera's directions
 * of uncertainty, the depth, the club's length.
 * `leanSd` is how well the lean is known: one that motion or the golfer's habits tell, and not the picture, does not move with the camera.
 * Null where the shaft is not in front of the camera.
 */
export function lastingColumns(
  shaft: Pick<ShaftInWorld, "t" | "grip" | "toHead">,
  { upright, moved }: CameraSpread,
  { length, lengthSd, depthSd }: LastingErrors,
  leanSd: number,
): number[][] | null {
  const headInWorld = along(shaft.grip, shaft.toHead, length);
  const grip = project(upright, shaft.grip);
  const head = project(upright, worldPoint(headInWorld.x, headInWorld.y, headInWorld.z));
  if (!grip || !head) return null;
  const seen = Math.hypot(head.x - grip.x, head.y - grip.y);
  const observation: LiftObservation = {
    t: shaft.t,
    grip,
    gripAlongSd: pixels(0),
    offsetSd: pixels(0),
    direction: seen > 0 ? { x: (head.x - grip.x) / seen, y: (head.y - grip.y) / seen } : { x: 0, y: 1 },
    angleSd: radians(0),
    head: { at: head, alongSd: pixels(0) },
    depth: { kind: "along-target-line", x: metres(shaft.grip.x), sd: metres(0) },
  };
  const view = viewShaft(upright, observation, noErrors);
  if (typeof view === "string" || view.spread === null) return null;
  const lean = Math.atan2(dot(shaft.toHead, view.sight), dot(shaft.toHead, view.square));
  const slope = (spreadAt(lean + 1e-4, length, view.distance) - spreadAt(lean - 1e-4, length, view.distance)) / 2e-4;
  const gain = (slope * leanSd ** 2) / ((slope * leanSd) ** 2 + (spreadShare * view.spread) ** 2 + 1e-12);
  const moveTo = (other: ShaftView, really = length) => {
    const miss = (other.spread ?? 0) - spreadAt(lean, really, other.distance);
    return { grip: other.grip, toHead: leaning(other, lean + gain * miss) };
  };
  const columns = [halfWay(moveTo(view, length - lengthSd), moveTo(view, length + lengthSd))];
  const pairs = moved.map(({ down, up }) => [
    viewShaft(down, observation, noErrors),
    viewShaft(up, observation, noErrors),
  ]);
  pairs.push([-depthSd, depthSd].map((by) => viewShaft(upright, observation, [0, 0, 0, by, 0])));
  for (const [down, up] of pairs) {
    if (!down || !up || typeof up === "string" || typeof down === "string") return null;
    columns.push(halfWay(moveTo(down), moveTo(up)));
  }
  return columns;
}
