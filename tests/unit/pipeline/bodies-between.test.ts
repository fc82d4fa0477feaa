import { describe, expect, it } from "vitest";
import { bodiesBetween } from "@overcue/client-capture/pipeline/bodies-between";
import type { BodyInWorld } from "@overcue/client-capture/pipeline/body-in-world";
import { groundPoint, worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds } from "@overcue/shared-geometry/units";

/** A body whose every measure is `x`. */
function bodyAt(x: number): BodyInWorld {
  const measure = { value: x, sd: 0.1 };
  return {
    feet: groundPoint(x, x),
    handsX: measure,
    hands: { place: worldPoint(x, x, x), sd: 0.04 },
    leadShoulderZ: measure,
    trailThighX: measure,
  };
}

const answerOf = (t: number) => ({ t: milliseconds(t), landmarks: [], world: [], score: 1 });

/** A picture at `t` whose newest answer is about the picture at `of`, where the body's every measure was `of`. */
const picture = (t: number, of: number) => ({ t, body: answerOf(of), inWorld: bodyAt(of) });

describe("the body between the pose model's answers", () => {
  it("K2.4 is where it was in the picture itself, once the later answer has come", () => {
    const pictures = [picture(100, 0), picture(150, 100), picture(200, 100), picture(250, 200)];
    const bodies = bodiesBetween(pictures);
    expect(bodies.map((body) => body?.handsX.value)).toEqual([100, 150, 200, 200]);
    expect(bodies.map((body) => body?.leadShoulderZ.value)).toEqual([100, 150, 200, 200]);
    expect(bodies.map((body) => body?.trailThighX.value)).toEqual([100, 150, 200, 200]);
    expect(bodies[1]?.feet.y).toBeCloseTo(150, 9);
    expect(bodies[1]?.hands.place.z).toBeCloseTo(150, 9);
    expect(bodies[1]?.hands.sd).toBeCloseTo(0.04, 9);
  });

  it("K2.4 lies on a smooth way through the answers where the body gathers speed", () => {
    const square = (t: number): number => (t / 100) ** 2;
    const pictures = [0, 100, 200, 300].map((of) => ({ t: of + 50, body: answerOf(of), inWorld: bodyAt(square(of)) }));
    const [, between] = bodiesBetween(pictures);
    expect(between?.handsX.value).toBeCloseTo(square(150), 6);
    expect(between?.leadShoulderZ.value).toBeCloseTo(square(150), 6);
  });

  it("K2.4 is the nearest answer before the first and after the last", () => {
    expect(bodiesBetween([picture(20, 50), picture(90, 50)])).toEqual([bodyAt(50), bodyAt(50)]);
  });

  it("K2.4 is not known where no answer had come", () => {
    const unseen = { t: 0, body: null, inWorld: null };
    expect(bodiesBetween([unseen, picture(60, 0)])).toEqual([null, bodyAt(0)]);
    expect(bodiesBetween([])).toEqual([]);
  });
});
