import { describe, expect, it, test } from "vitest";
import { followTop } from "@overcue/client-capture/checks/follow-top";
import { framingOf } from "@overcue/client-capture/checks/framing";
import { nextExposure, wantedExposure } from "@overcue/client-capture/frames/next-exposure";
import { landmarkIndex, type Body } from "@overcue/client-capture/pipeline/body";
import type { StepOutput } from "@overcue/client-capture/pipeline/step";
import { milliseconds } from "@overcue/shared-geometry/units";

type Name = keyof typeof landmarkIndex;
type Place = readonly [x: number, y: number];

const picture = { width: 720, height: 1280 };

/** Somebody at address in the middle of the picture, 500 pixels from crown to soles. */
const address: Readonly<Partial<Record<Name, Place>>> = {
  nose: [380, 450],
  leftShoulder: [370, 520],
  rightShoulder: [350, 525],
  leftHip: [320, 680],
  rightHip: [315, 680],
  leftWrist: [420, 700],
  rightWrist: [415, 705],
  leftHeel: [330, 900],
  rightHeel: [325, 905],
  leftToe: [390, 900],
  rightToe: [385, 910],
};

function bodyAt(change: Readonly<Partial<Record<Name, Place>>> = {}, shift: Place = [0, 0]): Body {
  const places = { ...address, ...change };
  const landmarks = Array.from({ length: 33 }, (_, index) => {
    const name = (Object.keys(landmarkIndex) as Name[]).find((each) => landmarkIndex[each] === index);
    const [x, y] = (name === undefined ? undefined : places[name]) ?? [360, 600];
    return { x: x + shift[0], y: y + shift[1], visibility: 0.9 };
  });
  return { t: milliseconds(0), landmarks, world: [], score: 0.9 };
}

describe("S2 frame", () => {
  it.each([
    { what: "whole", shift: [0, 0] as Place },
    { what: "feet-out", shift: [0, 400] as Place },
    { what: "head-out", shift: [0, -420] as Place },
    { what: "to-the-side", shift: [320, 0] as Place },
  ])("S2 says $what", ({ what, shift }) => {
    expect(framingOf(bodyAt({}, shift), picture)).toBe(what);
  });

  test("S2 nobody is nobody, and somebody far away is small", () => {
    expect(framingOf(null, picture)).toBe("nobody");
    expect(framingOf(bodyAt(), { width: 2160, height: 3840 })).toBe("small");
  });
});

describe("S2 the club at the top", () => {
  const atTop = bodyAt({ leftWrist: [430, 470], rightWrist: [425, 475] });
  type Now = StepOutput["shaft"]["now"];
  const output = (body: Body, now: object): StepOutput =>
    ({ body, picture, hands: "seen", shaft: { now: now as Now } }) as unknown as StepOutput;
  const tracked = (x: number, y: number) => ({ status: "tracked", head: { x, y } });

  test("S2 counts where the head was when the hands were above the shoulders", () => {
    expect(followTop("never", output(atTop, tracked(500, 300)))).toBe("inside");
    expect(followTop("inside", output(atTop, tracked(718, 300)))).toBe("outside");
    expect(followTop("inside", output(atTop, { status: "lost", reason: "out-of-picture" }))).toBe("outside");
  });

  test("S2 hands below the shoulders, a shaft that is lost for another reason and a head not found say nothing", () => {
    expect(followTop("never", output(bodyAt(), tracked(719, 2)))).toBe("never");
    expect(followTop("inside", output(atTop, { status: "lost", reason: "blurred-away" }))).toBe("inside");
    expect(followTop("outside", output(atTop, { status: "tracked", head: null }))).toBe("outside");
  });
});

describe("S4 exposure", () => {
  const range = { least: 0.1, most: 33 };

  test("S4 comes to rest at the shortest time that the light allows, and never hunts", () => {
    for (const light of [5, 20, 60, 120, 400, 2000]) {
      let time = wantedExposure;
      let steps = 0;
      for (; steps < 40; steps++) {
        const brightness = Math.min(255, light * time);
        const next = nextExposure(brightness, time, range);
        if (next === null) break;
        time = next;
      }
      expect(steps).toBeLessThan(20);
      expect(time).toBeGreaterThanOrEqual(wantedExposure);
      expect(time).toBeLessThanOrEqual(17);
      // Longer than wanted only where less would be dark.
      expect(time === wantedExposure || (light * time) / 1.5 < 160).toBe(true);
    }
  });

  test("S4 stays within what the device allows", () => {
    expect(nextExposure(10, 4, { least: 0.1, most: 4 })).toBeNull();
    expect(nextExposure(10, 3.9, { least: 0.1, most: 4 })).toBe(4);
    expect(nextExposure(250, 4, { least: 3.5, most: 33 })).toBe(3.5);
  });
});
