import { expect, it } from "vitest";
import { landmarkIndex, type Body } from "@overcue/client-capture/pipeline/body";
import { gripsBetween } from "@overcue/client-capture/pipeline/grips-between";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { imagePoint } from "@overcue/shared-geometry/point";
import { milliseconds, pixels, radians, radiansPerSecond } from "@overcue/shared-geometry/units";

const hands = [landmarkIndex.leftWrist, landmarkIndex.rightWrist, landmarkIndex.leftIndex, landmarkIndex.rightIndex];

/** A pose of the picture at `t` with both hands at (x, y). */
function poseAt(t: number, x: number, y: number): Body {
  const landmarks = Array.from({ length: 33 }, (_, index) =>
    (hands as readonly number[]).includes(index) ? { x, y, visibility: 1 } : { x: 0, y: 0, visibility: 1 },
  );
  return { t: milliseconds(t), landmarks, world: [], score: 1 };
}

/** A shaft straight down the picture along x = 100, whose grip the tracker had at y = 50. */
const shaftAt = (t: number): Extract<ShaftInImage, { status: "tracked" }> => ({
  status: "tracked",
  t: milliseconds(t),
  grip: imagePoint(100, 50),
  head: imagePoint(100, 300),
  angle: radians(Math.PI / 2),
  sd: radians(0.01),
  angularRate: radiansPerSecond(0),
  offsetSd: pixels(1),
  headSd: pixels(5),
  rodSeen: false,
});

it("K2.4 a finished rep's grip is where the hands were between two poses, on the shaft's own line", () => {
  const shafts = [shaftAt(0), shaftAt(50), shaftAt(100), shaftAt(150)];
  const [before, after] = [poseAt(0, 90, 60), poseAt(100, 130, 160)];
  const placed = gripsBetween(
    shafts,
    [before, before, before, after].map((body) => ({ body })),
    "right",
  );
  const grips = placed.map((shaft) => (shaft.status === "lost" ? null : [shaft.grip.x, shaft.grip.y]));
  expect(grips[1]?.[0]).toBeCloseTo(100, 6);
  // 60 pixels on: far more than the hands' middle is off by along the shaft.
  expect(grips[1]?.[1]).toBeGreaterThan(107);
  expect(grips[1]?.[1]).toBeLessThan(110);
  expect(grips[2]?.[1]).toBeGreaterThan(158);
  // Before the first pose and after the last one the tracker's own stands.
  expect(grips[0]).toEqual([100, 50]);
  expect(grips[3]).toEqual([100, 50]);
  expect(placed.map((shaft) => (shaft.status === "tracked" ? shaft.head : null))).toEqual(
    shafts.map(({ head }) => head),
  );
});

it("K2.4 a pose that hardly disagrees with the tracker's grip hardly moves it", () => {
  const poses = [poseAt(0, 100, 54), poseAt(100, 100, 54)].map((body) => ({ body }));
  const [, placed] = gripsBetween([shaftAt(0), shaftAt(50)], poses, "right");
  expect(placed?.status === "tracked" ? placed.grip.y : null).toBeLessThan(51);
  expect(placed?.status === "tracked" ? placed.grip.y : null).toBeGreaterThan(50);
});

it("K2.4 a shaft that was not seen stays unseen, and hands that nobody saw move no grip", () => {
  const lost: ShaftInImage = { status: "lost", t: milliseconds(50), reason: "end-on" };
  expect(gripsBetween([lost], [{ body: poseAt(0, 1, 1) }, { body: poseAt(100, 1, 1) }], "left")).toEqual([lost]);
  const handless: Body = { ...poseAt(0, 1, 1), landmarks: [] };
  expect(gripsBetween([shaftAt(50)], [{ body: handless }, { body: null }], "left")).toEqual([shaftAt(50)]);
  expect(gripsBetween([], [], "left")).toEqual([]);
});
