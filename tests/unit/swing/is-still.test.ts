import { expect, it } from "vitest";
import type { FollowedSample } from "@overcue/client-capture/swing/follow-swing";
import { isStill } from "@overcue/client-capture/swing/is-still";
import type { ClubInPicture } from "@overcue/client-capture/swing/swing-sample";
import { worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds, radians } from "@overcue/shared-geometry/units";
import { gaussian, seededRandom } from "../../scenes/random.ts";

const degree = Math.PI / 180;

/** Half a second at 60 a second; `lean` and `inPicture` by the share of it that has gone by. */
const samplesOf = (
  lean: (share: number) => number,
  inPicture: (share: number) => ClubInPicture | null,
): FollowedSample[] =>
  Array.from({ length: 31 }, (_, n) => {
    const t = milliseconds((n * 1000) / 60);
    const angle = radians(lean(n / 30) * degree);
    const shaft = { t, grip: worldPoint(0, 0.4, 0.8), toHead: { x: -Math.sin(angle), y: 0, z: -Math.cos(angle) } };
    const hanging = { ...shaft, covariance: [] };
    return {
      ...{ t, shaft: hanging, hanging, angle, angleSd: 0.3, alone: null, tracked: true, hands: null },
      ...{ leadShoulderZ: null, trailThighX: null, inPicture: inPicture(n / 30), feet: null },
    };
  });

const club = (degrees: number): ClubInPicture => ({
  grip: { x: -0.41, y: -0.77 },
  head: null,
  angle: radians(degrees * degree),
});
const flickers = (share: number): number => (Math.round(share * 10) % 2 === 0 ? 50 : 0);

it("K4.2 a club stands still that stands still in the picture, though its lean is not known for two pictures on end", () => {
  expect(isStill(samplesOf(flickers, () => club(62)))).toBe(true);
  expect(isStill(samplesOf(flickers, (share) => club(62 + 2 * share)))).toBe(false);
});

it("K4.2 a hand that the pose places up and down the shaft, and a fifth of a degree from picture to picture, are no motion", () => {
  const random = seededRandom(3);
  const shaken = (): ClubInPicture => {
    const along = 0.06 * gaussian(random);
    const steady = club(62 + 0.2 * gaussian(random));
    const [cos, sin] = [Math.cos(62 * degree), Math.sin(62 * degree)];
    return { ...steady, grip: { x: steady.grip.x + along * cos, y: steady.grip.y + along * sin } };
  };
  expect(isStill(samplesOf(flickers, shaken))).toBe(true);
  const creeps = (share: number): ClubInPicture => {
    const now = shaken();
    return { ...now, grip: { x: now.grip.x + 0.03 * share, y: now.grip.y } };
  };
  expect(isStill(samplesOf(flickers, creeps))).toBe(false);
});

it("K4.2 across the half turn an angle in the picture is no jump", () => {
  expect(isStill(samplesOf(flickers, (share) => club(share < 0.9 ? 179.9 : -179.9)))).toBe(true);
});

it("K4.2 where it is not known in the picture, its swing angle and its hands tell", () => {
  expect(isStill(samplesOf(flickers, () => null))).toBe(false);
  expect(
    isStill(
      samplesOf(
        () => 20,
        () => null,
      ),
    ),
  ).toBe(true);
  expect(
    isStill(
      samplesOf(
        (share) => 30 * share,
        () => null,
      ),
    ),
  ).toBe(false);
});
