import { describe, expect, it } from "vitest";
import { focalHint } from "@overcue/client-capture/station/focal-hint";
import { downInCamera } from "@overcue/client-capture/station/down-in-camera";
import { rotate } from "@overcue/shared-geometry/rotation";
import { uprightPhone } from "./upright-phone.ts";

const camera = uprightPhone([-4, 0.5, 1], [0, 0.6, 0.7], 0.06);
/** Down in the camera's axes: x right, y down, z forward. */
const down = rotate(camera.rotation, { x: 0, y: 0, z: -1 });

/** What a sensor feels at rest in a phone that is held so, turned by so many degrees against its picture: 9.81 upwards, in the device's axes. */
function felt(turned: number, sign: 1 | -1) {
  const [right, top, out] = [-9.81 * down.x, 9.81 * down.y, 9.81 * down.z];
  const angle = (turned * Math.PI) / 180;
  return {
    x: sign * (right * Math.cos(angle) + top * Math.sin(angle)),
    y: sign * (-right * Math.sin(angle) + top * Math.cos(angle)),
    z: sign * out,
  };
}

describe("what is known of the camera beforehand", () => {
  it.each([
    [0, 1],
    [0, -1],
    [90, 1],
    [90, -1],
    [270, 1],
    [180, -1],
  ] as const)(
    "S4 down is felt the same with the screen turned by %i degrees and the sensor counting by %i",
    (turned, sign) => {
      const told = downInCamera(felt(turned, sign), turned);
      expect(told?.x).toBeCloseTo(down.x, 9);
      expect(told?.y).toBeCloseTo(down.y, 9);
      expect(told?.z).toBeCloseTo(down.z, 9);
    },
  );

  it("S4 nothing is felt of down in a phone that is moved or lies flat", () => {
    expect(downInCamera({ x: 0, y: 14, z: 3 }, 0)).toBeNull();
    expect(downInCamera({ x: 0, y: 0.5, z: 9.8 }, 0)).toBeNull();
    expect(downInCamera({ x: Number.NaN, y: 0, z: 0 }, 0)).toBeNull();
  });

  it("S4 a lens is taken to film the sensor's full width, upright, across and in 4:3, and closer by the track's zoom", () => {
    const focal = (width: number, height: number, zoom = 1): number => focalHint({ width, height, zoom }).focal;
    expect(focal(720, 1280)).toBeCloseTo(972, 6);
    expect(focal(1280, 720)).toBeCloseTo(972, 6);
    expect(focal(1280, 960)).toBeCloseTo(972, 6);
    expect(focal(720, 1280, 2)).toBeCloseTo(1944, 6);
  });
});
