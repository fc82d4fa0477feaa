import { expect, it } from "vitest";
import { filterInput } from "@overcue/client-capture/pipeline/filter-input";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import { groundPoint, imagePoint, worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds, pixels, radians, radiansPerSecond } from "@overcue/shared-geometry/units";

const settings = defaultStation("7-iron", "right");
const camera = defaultCamera(pixels(720), pixels(1280), "right");
const known = { value: 0, sd: 0.1 };
const body = {
  feet: groundPoint(0, 0.8),
  handsX: known,
  hands: { place: worldPoint(0, 0.4, 0.8), sd: 0.04 },
  leadShoulderZ: { value: 1.4, sd: 0.04 },
  trailThighX: known,
};

/** What the lift is told of a shaft straight down the picture, its line seen `length` pixels long and its end known to `headSd`. */
function headTold(length: number, headSd: number) {
  const { seen } = filterInput(
    {
      shaft: {
        ...{ status: "tracked", t: milliseconds(0), grip: imagePoint(360, 600), head: imagePoint(360, 600 + length) },
        ...{ angle: radians(Math.PI / 2), sd: radians(0.01), angularRate: radiansPerSecond(0) },
        ...{ offsetSd: pixels(1), headSd: pixels(headSd), rodSeen: false },
      },
      body,
      resting: false,
    },
    camera,
    settings,
  );
  if (seen === null || seen.head === null) throw new Error("filterInput told of no head");
  return seen.head;
}

it("L9 the club goes on two centimetres beyond the line that is seen of it, however short that looks", () => {
  for (const length of [60, 250]) {
    const beyond = headTold(length, 5).at.y - 600 - length;
    const seenShare = 1 - 0.02 / gripToHead(settings);
    expect(beyond).toBeCloseTo(length / seenShare - length, 6);
  }
});

it("L9 what lasts of the head's error grows with the length that is seen: a plain end tells the lean where the shaft is foreshortened, and hardly where it is seen at its length", () => {
  expect(headTold(250, 4).alongSd / 250).toBeGreaterThan(0.12);
  expect(headTold(60, 4).alongSd).toBeLessThan(0.4 * headTold(250, 4).alongSd);
  expect(headTold(60, 15).alongSd).toBeGreaterThan(2 * 15);
});
