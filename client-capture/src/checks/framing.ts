import { landmarkIndex, type Body } from "../pipeline/body.ts";

/** How the golfer stands in the picture. */
export type Framing = "nobody" | "whole" | "head-out" | "feet-out" | "to-the-side" | "small";

/** From 4 m a golfer at address takes 0.29 of an upright picture's height; under this share the shaft has too few pixels. */
const leastShare = 0.2;

const feet = ["leftHeel", "rightHeel", "leftToe", "rightToe"] as const;
const sides = ["leftShoulder", "rightShoulder", "leftHip", "rightHip", "leftWrist", "rightWrist"] as const;

/** Whether head, hands and feet are in the picture. The model also places what lies beyond the picture's edge. */
export function framingOf(body: Body | null, picture: { readonly width: number; readonly height: number }): Framing {
  if (body === null) return "nobody";
  const at = (name: keyof typeof landmarkIndex) => body.landmarks[landmarkIndex[name]];
  const nose = at("nose");
  const shoulder = at("leftShoulder");
  const other = at("rightShoulder");
  if (nose === undefined || shoulder === undefined || other === undefined) return "nobody";
  const neck = (shoulder.y + other.y) / 2 - nose.y;
  // From nose to crown is about two thirds of the way from nose to shoulders. From memory.
  const crown = nose.y - (2 / 3) * Math.max(0, neck);
  const soles = feet.flatMap((name) => at(name)?.y ?? []);
  const lowest = Math.max(...soles);
  if (soles.length === 0) return "nobody";
  if (lowest > picture.height) return "feet-out";
  if (crown < 0) return "head-out";
  const across = sides.flatMap((name) => at(name)?.x ?? []);
  if (Math.min(...across) < 0 || Math.max(...across) > picture.width) return "to-the-side";
  return lowest - crown < leastShare * picture.height ? "small" : "whole";
}
