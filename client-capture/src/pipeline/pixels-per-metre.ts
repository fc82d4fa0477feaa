import { landmarkIndex, type Body } from "./body.ts";

/**
 * Thigh and shank of a grown golfer of 1.75 m, metres: 0.245 and 0.246 of the height (Winter, Biomechanics and Motor Control of Human
 * Movement, from memory). The pose model's own metres run short by an eighth on real golfers, so its figure is stretched to this.
 */
const legLength = 0.491 * 1.75;

/** Pixels to the metre at the body: least squares between landmarks and the model's figure along the camera's axis; null for too few. */
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
  const scale = ((together / alone) * modelLeg(body)) / legLength;
  return Number.isFinite(scale) && scale > 1 ? scale : null;
}

/** Mean of the figure's two legs, hip to knee to ankle, in the model's metres. */
function modelLeg({ world }: Body): number {
  const apart = (from: number, to: number): number => {
    const a = world[from];
    const b = world[to];
    return a === undefined || b === undefined ? NaN : Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
  };
  const { leftHip, leftKnee, leftAnkle, rightHip, rightKnee, rightAnkle } = landmarkIndex;
  return (
    (apart(leftHip, leftKnee) +
      apart(leftKnee, leftAnkle) +
      apart(rightHip, rightKnee) +
      apart(rightKnee, rightAnkle)) /
    2
  );
}
