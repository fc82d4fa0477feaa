import type { Camera } from "@overcue/shared-geometry/camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { between, namedRandom, type Random } from "../scenes/random.ts";

/** A camera somewhere behind a station and points in front of it, from a seed. */
export interface OracleScene {
  readonly camera: Camera;
  readonly points: readonly Point<"world">[];
  readonly random: Random;
}

export function oracleScene(seed: number): OracleScene {
  const random = namedRandom(seed, "oracle");
  const camera = lookAtCamera({
    position: worldPoint(between(random, -5, -2.5), between(random, 0, 1), between(random, 0.6, 1.4)),
    target: worldPoint(between(random, -0.2, 1), between(random, 0.2, 0.8), between(random, 0.4, 1)),
    roll: radians(between(random, -0.07, 0.07)),
    focal: pixels(between(random, 780, 1170)),
    width: pixels(720),
    height: pixels(1280),
    handed: "right",
  });
  const points = Array.from({ length: 40 }, () =>
    worldPoint(between(random, -1, 1.5), between(random, -0.5, 1.2), between(random, 0, 2)),
  );
  return { camera, points, random };
}

/** A rotation as OpenCV's rotation vector (axis times angle); not for half turns. */
export function rotationVector([a, b, c, d, e, f, g, h, i]: Camera["rotation"]): [number, number, number] {
  const axis = [h - f, c - g, d - b] as const;
  const sine = Math.hypot(...axis) / 2;
  const angle = Math.atan2(sine, (a + e + i - 1) / 2);
  const by = sine > 1e-12 ? angle / (2 * sine) : 0.5;
  return [axis[0] * by, axis[1] * by, axis[2] * by];
}
