import { expect, it } from "vitest";
import { snapStick } from "@overcue/client-capture/station/snap-stick";
import { project } from "@overcue/shared-geometry/camera-project";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { Point } from "@overcue/shared-geometry/point";
import type { StickEnd } from "@overcue/shared-geometry/stick-in-image";
import { stationScene } from "../../accuracy/station/station-scene.ts";

function seen(camera: Camera, place: Point<"world">): Point<"image"> {
  const at = project(camera, place);
  if (at === null) throw new Error("behind the lens");
  return at;
}

/** How far along its stick an end was taken to lie from where it is, in the error that it states; 0 where it is taken for no end. */
const sdsOff = ({ at, isEnd, alongSd }: StickEnd, truth: Point<"image">): number =>
  isEnd ? Math.hypot(at.x - truth.x, at.y - truth.y) / alongSd : 0;

it("P2 where a post stands behind a stick's far end, the fall of contrast beside the post is not taken for that end", () => {
  const { picture, camera, ends } = stationScene("empty hands", 1, "stepped away", "exactly");
  let whole = 0;
  for (const { line, near, far } of ends) {
    const [nearSeen, farSeen] = [seen(camera, near), seen(camera, far)];
    const snapped = snapStick(picture, line, nearSeen, farSeen);
    if (!snapped.ok) throw new Error(snapped.reason);
    expect(sdsOff(snapped.stick.near, nearSeen)).toBeLessThan(4);
    expect(sdsOff(snapped.stick.far, farSeen)).toBeLessThan(4);
    whole += Number(snapped.stick.near.isEnd) + Number(snapped.stick.far.isEnd);
  }
  expect(whole).toBeGreaterThanOrEqual(3);
});
