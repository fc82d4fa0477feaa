import { landmarkIndex, type Body } from "../pipeline/body.ts";
import { middleOf } from "./hands.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Poses remembered: enough for the while that a walk is told from, at 60 poses a second. */
const remembered = 64;

/** Where hips and feet were at the last poses, and how far the camera had moved the picture, pixels, oldest overwritten first. */
export interface BodyPlaces {
  readonly t: Float64Array;
  readonly hipsX: Float64Array;
  readonly hipsY: Float64Array;
  readonly feetX: Float64Array;
  readonly feetY: Float64Array;
  readonly swayX: Float64Array;
  readonly swayY: Float64Array;
  count: number;
}

export const makeBodyPlaces = (): BodyPlaces => ({
  t: new Float64Array(remembered),
  hipsX: new Float64Array(remembered),
  hipsY: new Float64Array(remembered),
  feetX: new Float64Array(remembered),
  feetY: new Float64Array(remembered),
  swayX: new Float64Array(remembered),
  swayY: new Float64Array(remembered),
  count: 0,
});

/** Remembers a pose, once. `swayX`, `swayY`: how far the camera has moved the picture, pixels. */
export function placeBody(places: BodyPlaces, body: Body, swayX: number, swayY: number): void {
  const { count } = places;
  if (count > 0 && body.t <= (places.t[(count - 1) % remembered] as number)) return;
  const at = count % remembered;
  const hips = middleOf(body, landmarkIndex.leftHip, landmarkIndex.rightHip);
  const feet = middleOf(body, landmarkIndex.leftAnkle, landmarkIndex.rightAnkle);
  places.t[at] = body.t;
  places.hipsX[at] = hips.x;
  places.hipsY[at] = hips.y;
  places.feetX[at] = feet.x;
  places.feetY[at] = feet.y;
  places.swayX[at] = swayX;
  places.swayY[at] = swayY;
  places.count++;
}

/**
 * Whether the body goes away from where it stood, or another one was found: hips and feet have gone the same way, by more than they have gone apart, since each of the poses of a while ago, of which one may have been
 * misjudged. In a swing the feet stay. Both in the picture and with the camera's sway taken out, which is not told well where little stands in the picture. `torso` in picture pixels.
 */
export function isWalking(places: BodyPlaces, torso: number, tuning: ShaftTuning): boolean {
  const { t, hipsX, hipsY, feetX, feetY, swayX, swayY, count } = places;
  if (count === 0) return false;
  const now = (count - 1) % remembered;
  let asked = 0;
  for (let back = 2; back <= Math.min(remembered, count); back++) {
    const then = (count - back) % remembered;
    const seconds = ((t[now] as number) - (t[then] as number)) / 1000;
    if (seconds > tuning.walkOver) break;
    if (seconds < tuning.walkOver / 2) continue;
    const hipsWentX = (hipsX[now] as number) - (hipsX[then] as number);
    const hipsWentY = (hipsY[now] as number) - (hipsY[then] as number);
    const feetWentX = (feetX[now] as number) - (feetX[then] as number);
    const feetWentY = (feetY[now] as number) - (feetY[then] as number);
    const wentX = (hipsWentX + feetWentX) / 2;
    const wentY = (hipsWentY + feetWentY) / 2;
    const swayedX = (swayX[now] as number) - (swayX[then] as number);
    const swayedY = (swayY[now] as number) - (swayY[then] as number);
    const together = Math.min(Math.hypot(wentX, wentY), Math.hypot(wentX - swayedX, wentY - swayedY));
    const apart = Math.hypot(hipsWentX - feetWentX, hipsWentY - feetWentY);
    if (together - apart < tuning.walkRate * seconds * torso) return false;
    asked++;
  }
  return asked > 0;
}
