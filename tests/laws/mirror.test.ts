import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { spreadCamera } from "@overcue/shared-geometry/camera-spread";
import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { filterShaft, startFilter } from "@overcue/shared-geometry/filter-shaft";
import { mirrorObservation, type LiftObservation } from "@overcue/shared-geometry/lift-observation";
import { liftShaft } from "@overcue/shared-geometry/lift-shaft";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import { readOutsOf } from "@overcue/shared-geometry/read-outs-of";
import { solveStation } from "@overcue/shared-geometry/solve-station";
import { mirrorStick, stickBetween } from "@overcue/shared-geometry/stick-in-image";
import { metres, milliseconds, pixels, radians } from "@overcue/shared-geometry/units";

const width = pixels(720);
const height = pixels(1280);
const right = defaultStation("7-iron", "right");
const left = defaultStation("7-iron", "left");

/** Places on a grid of 1/1024 pixel, so that a mirror image is exact in binary. */
const placed = (low: number, high: number) =>
  fc.integer({ min: low * 1024, max: high * 1024 }).map((value) => value / 1024);

const cameras = fc.record({ x: placed(-5, -3), y: placed(0, 1), z: placed(0.625, 1.375), roll: placed(0, 1) });

function cameraOf(
  { x, y, z, roll }: { x: number; y: number; z: number; roll: number },
  handed: Camera["handed"],
): Camera {
  return lookAtCamera({
    position: worldPoint(x, y, z),
    target: worldPoint(0, 0.5, 0.9),
    roll: radians((roll - 0.5) * 0.1),
    focal: pixels(980),
    width,
    height,
    handed,
  });
}

const observations = fc
  .record({
    gx: placed(200, 500),
    gy: placed(400, 800),
    angle: fc.double({ min: -3.1, max: 3.1, noNaN: true }),
    along: placed(20, 230),
    depth: placed(-1, 0),
  })
  .map(({ gx, gy, angle, along, depth }): LiftObservation => {
    const direction = { x: Math.cos(angle), y: Math.sin(angle) };
    const snap = (value: number): number => Math.round(value * 1024) / 1024;
    return {
      t: milliseconds(0),
      grip: imagePoint(gx, gy),
      gripAlongSd: pixels(3),
      offsetSd: pixels(2),
      direction,
      angleSd: radians(0.01),
      head: { at: imagePoint(snap(gx + along * direction.x), snap(gy + along * direction.y)), alongSd: pixels(3) },
      depth: { kind: "along-target-line", x: metres(depth), sd: metres(0.05) },
    };
  });

const diagonal = Array.from({ length: 49 }, (_, index) => (index % 8 === 0 ? 1e-4 : 0));

describe("a left-handed golfer is the mirror image, exactly", () => {
  it("C3 a point is seen at the mirrored place", () => {
    fc.assert(
      fc.property(cameras, placed(-1, 1), placed(0, 1), placed(0, 2), (camera, x, y, z) => {
        const point = worldPoint(x, y, z);
        const seen = project(cameraOf(camera, "right"), point);
        const mirrored = project(cameraOf(camera, "left"), point);
        expect(mirrored).toStrictEqual(seen && imagePoint(width - seen.x, seen.y));
      }),
    );
  });

  it("L5 a mirrored picture lifts to the same shaft, covariance and read-outs to the last bit", () => {
    fc.assert(
      fc.property(cameras, observations, (camera, seen) => {
        const one = liftShaft(spreadCamera(cameraOf(camera, "right"), diagonal), seen, right);
        const other = liftShaft(spreadCamera(cameraOf(camera, "left"), diagonal), mirrorObservation(seen, width), left);
        expect(other).toStrictEqual(one);
        if (!one.ok || !other.ok) return;
        expect(readOutsOf(other.candidates[0], left, null)).toStrictEqual(readOutsOf(one.candidates[0], right, null));
      }),
    );
  });

  it("F4 the filter gives the same answers to the last bit", () => {
    fc.assert(
      fc.property(cameras, fc.array(observations, { minLength: 2, maxLength: 5 }), (camera, pictures) => {
        const run = (handed: Camera["handed"]) => {
          const through = spreadCamera(cameraOf(camera, handed), diagonal);
          let state = startFilter;
          return pictures.map((picture, index) => {
            const t = milliseconds(index * 16);
            const seen = handed === "left" ? mirrorObservation(picture, width) : picture;
            const next = filterShaft(state, { t, seen: { ...seen, t } }, { through, settings: right });
            state = next.state;
            return next.output;
          });
        };
        expect(run("left")).toStrictEqual(run("right"));
      }),
      { numRuns: 30 },
    );
  });

  it("S6 a mirrored station gives the same camera but for its hand", () => {
    fc.assert(
      fc.property(placed(-6, 6), placed(-6, 6), (a, b) => {
        const sticks = [
          stickBetween("ball-line", imagePoint(485 + a, 880), imagePoint(448, 820 + b)),
          stickBetween("toe-line", imagePoint(300, 900), imagePoint(300.5, 846)),
          stickBetween("heel-line", imagePoint(205, 903), imagePoint(222, 848)),
        ];
        const one = solveStation({ sticks, settings: right, width, height });
        const other = solveStation({
          sticks: sticks.map((stick) => mirrorStick(stick, width)),
          settings: left,
          width,
          height,
        });
        const handless = (solution: typeof one) =>
          solution.verdict === "refused" ? solution : { ...solution, camera: { ...solution.camera, handed: null } };
        expect(handless(other)).toStrictEqual(handless(one));
      }),
      { numRuns: 15 },
    );
  });
});
