import type { Handed } from "@overcue/shared-geometry/station";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { landmarkIndex, type Body } from "./body.ts";

/** Under this no landmark of a hand says anything. */
const leastVisibility = 0.05;

/**
 * Middle of the two hands in the picture, and the landmarks it rests on. A hand counts by its visibility squared: behind a golfer the
 * lead hand is mostly hidden. Null where neither hand is seen at all.
 */
export function handsInPicture(
  body: Body,
  handed: Handed,
): { readonly at: Point<"image">; readonly score: number; readonly from: readonly number[] } | null {
  const sides =
    handed === "right"
      ? ([
          ["rightWrist", "rightIndex"],
          ["leftWrist", "leftIndex"],
        ] as const)
      : ([
          ["leftWrist", "leftIndex"],
          ["rightWrist", "rightIndex"],
        ] as const);
  let x = 0;
  let y = 0;
  let weights = 0;
  let score = 0;
  const from: number[] = [];
  for (const names of sides) {
    const wrist = body.landmarks[landmarkIndex[names[0]]];
    const index = body.landmarks[landmarkIndex[names[1]]];
    if (wrist === undefined || index === undefined || wrist.visibility < leastVisibility) continue;
    const weight = wrist.visibility ** 2;
    x += (weight * (wrist.x + index.x)) / 2;
    y += (weight * (wrist.y + index.y)) / 2;
    weights += weight;
    score = Math.max(score, wrist.visibility);
    from.push(landmarkIndex[names[0]], landmarkIndex[names[1]]);
  }
  return weights > 0 ? { at: imagePoint(x / weights, y / weights), score, from } : null;
}
