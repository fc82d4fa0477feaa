import { ray } from "@overcue/shared-geometry/camera-ray";
import type { Camera } from "@overcue/shared-geometry/camera";
import { groundPoint, imagePoint, worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { along, type Vector } from "@overcue/shared-geometry/vector";
import { landmarkIndex, type Body } from "./body.ts";
import { followFeet, startFeet, type FeetState } from "./follow-feet.ts";
import { handsInPicture } from "./hands-in-picture.ts";
import { relativeInWorld } from "./relative-in-world.ts";

interface Estimated {
  readonly value: number;
  readonly sd: number;
}

/** Where the parts of the body that matter are in the world, metres, one standard deviation each. */
export interface BodyInWorld {
  /** Middle of the two feet on the ground. */
  readonly feet: Point<"ground">;
  /** The hands' place along the target line and its spread: what the lift needs. */
  readonly handsX: Estimated;
  readonly hands: { readonly place: Point<"world">; readonly sd: number };
  readonly leadShoulderZ: Estimated;
  readonly trailThighX: Estimated;
}

export interface BodyState {
  readonly feet: FeetState;
}

export const startBody: BodyState = { feet: startFeet };

/** How far off the model's depths are, metres, one sd: as measured on the demo golfer's swings up to impact. */
const modelDepthSd = 0.13;
/**
 * The shoulders' middle stays about over the feet along the target line, and from it the model's figure reaches less far towards and away from the
 * camera than arms do: the demo golfer's hands are this much farther. Both hands count alike, since the hidden one's depth is as good.
 */
const depthGain = 1.1;
/** How far the shoulders' middle is behind the feet's, metres: a golfer's trail hand is the lower one, and the trunk tilts with it. As the demo golfer's hands have it, with `depthGain`. */
const shouldersBehind = 0.07;
/** Landmarks are about this far off, metres at the body (from the capsule-figure trial: 4 to 15 cm at the worst checkpoints). */
const landmarkSd = 0.04;

/**
 * The body in the world: the feet stand on the ground, and the model's own three-dimensional figure, turned into the world's axes, says
 * how far in front of or behind them the hands and shoulders are. Null where the feet or the hands are not in the picture at all.
 */
export function bodyInWorld(
  state: BodyState,
  body: Body,
  camera: Camera,
  settings: StationSettings,
): { readonly state: BodyState; readonly output: BodyInWorld | null } {
  const feet = followFeet(state.feet, body, camera, settings);
  const hands = handsInPicture(body, camera.handed);
  if (hands === null) return { state: { feet: feet.state }, output: null };
  const lead = camera.handed === "right" ? "left" : "right";
  const trail = camera.handed === "right" ? "right" : "left";
  const depthOf = (indices: readonly number[]): number =>
    feet.output.place.x + relativeInWorld(body, camera, indices, ankles).x;
  const sd = Math.hypot(feet.output.sdX, modelDepthSd);

  const fromShoulders = relativeInWorld(body, camera, knuckles, shoulders).x;
  const shouldersX = feet.output.place.x - shouldersBehind;
  const handsX = shouldersX + depthGain * fromShoulders;
  const handsPlace = placeAtX(camera, hands.at, handsX);
  // Shoulders too reach out from their middle, which stays near the feet: the figure's own lean from the ankles up would put them a quarter of a metre too far.
  const shoulderIndex = landmarkIndex[`${lead}Shoulder`];
  const shoulder = body.landmarks[shoulderIndex];
  const shoulderX = shouldersX + relativeInWorld(body, camera, [shoulderIndex], shoulders).x;
  const shoulderPlace = shoulder && placeAtX(camera, shoulder, shoulderX);
  if (handsPlace === null || !shoulderPlace) return { state: { feet: feet.state }, output: null };
  return {
    state: { feet: feet.state },
    output: {
      feet: groundPoint(feet.output.place.x, feet.output.place.y),
      handsX: { value: handsX, sd },
      hands: { place: handsPlace, sd: landmarkSd },
      leadShoulderZ: { value: shoulderPlace.z, sd: landmarkSd },
      trailThighX: {
        value: depthOf([landmarkIndex[`${trail}Hip`], landmarkIndex[`${trail}Knee`]]),
        sd,
      },
    },
  };
}

/** A grip lies in the fingers, a hand's breadth beyond the wrists. */
const knuckles = [landmarkIndex.leftIndex, landmarkIndex.rightIndex, landmarkIndex.leftPinky, landmarkIndex.rightPinky];
const shoulders = [landmarkIndex.leftShoulder, landmarkIndex.rightShoulder];
const ankles = [landmarkIndex.leftAnkle, landmarkIndex.rightAnkle];

/** The point of the line of sight with that world x; null where the line of sight runs square to the target line. */
function placeAtX(camera: Camera, at: { readonly x: number; readonly y: number }, x: number): Point<"world"> | null {
  const sight = ray(camera, imagePoint(at.x, at.y));
  if (Math.abs(sight.direction.x) < 0.05) return null;
  const place: Vector = along(sight.origin, sight.direction, (x - sight.origin.x) / sight.direction.x);
  return worldPoint(place.x, place.y, place.z);
}
