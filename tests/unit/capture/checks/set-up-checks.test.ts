import { describe, expect, it, test } from "vitest";
import { cameraChecks } from "@overcue/client-capture/checks/camera-checks";
import { cameraView, type CameraView } from "@overcue/client-capture/checks/camera-view";
import { lightCheck, rateCheck } from "@overcue/client-capture/checks/light-checks";
import { rodCheck } from "@overcue/client-capture/checks/rod-check";
import { nextCheck, setUpChecks, type SetUpFacts } from "@overcue/client-capture/checks/set-up-checks";
import { reachOfExposure, reachOfRate } from "@overcue/client-capture/checks/speed-reach";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import { pixels, radians } from "@overcue/shared-geometry/units";
import { setUpCheckIds } from "@overcue/shared-geometry/wire/set-up-checks";

const good: CameraView = { behindBall: 4, height: 0.9, aside: 0.02, roll: 0.4 };

const facts: SetUpFacts = {
  source: { kind: "camera" },
  certificate: "trusted",
  calibration: "station",
  view: good,
  framing: "whole",
  top: "inside",
  light: { brightness: 120, exposureMs: 1, framesPerSecond: 60, hasTorch: false },
  rod: { is: "none" },
  rodOn: true,
  stage: "slow-rehearsal",
  spaceClear: true,
};

describe("S1 camera", () => {
  it.each(["right", "left"] as const)("S1 reads a %s-hander's camera off as a tape measure would", (handed) => {
    const roll = (4 * Math.PI) / 180;
    const camera = lookAtCamera({
      position: worldPoint(-3.7, 0.8, 1.1),
      target: worldPoint(0, 0.5, 0.9),
      roll: radians(roll),
      focal: pixels(970),
      width: pixels(720),
      height: pixels(1280),
      handed,
    });
    const view = cameraView(camera, defaultStation("7-iron", handed));
    expect(view.behindBall).toBeCloseTo(3.7, 10);
    expect(view.height).toBeCloseTo(1.1, 10);
    // 0.8 m from the ball line; the hands are 2.5 cm before the toe line at 0.575 m.
    expect(view.aside).toBeCloseTo(0.8 - 0.55, 2);
    expect(Math.abs(view.roll)).toBeCloseTo(4, 1);
  });

  it.each([
    { wrong: { height: 1.62 }, id: "camera-height", says: ["Lower", "1.62 m"] },
    { wrong: { height: 0.4 }, id: "camera-height", says: ["Raise", "0.40 m"] },
    { wrong: { behindBall: 7.5 }, id: "camera-distance", says: ["nearer", "7.5 m"] },
    { wrong: { behindBall: 2 }, id: "camera-distance", says: ["back", "2.0 m"] },
    { wrong: { aside: 0.6 }, id: "hand-line", says: ["60 cm", "ball side"] },
    { wrong: { aside: -0.4 }, id: "hand-line", says: ["40 cm", "heels side"] },
    { wrong: { roll: -7 }, id: "camera-level", says: ["7 degrees"] },
  ])("S1 $id is a problem with its number and the way to go: $wrong", ({ wrong, id, says }) => {
    const checks = cameraChecks({ ...good, ...wrong });
    expect(checks.filter(({ state }) => state !== "ok").map((check) => check.id)).toEqual([id]);
    const [bad] = checks.filter(({ state }) => state === "problem");
    for (const part of says) expect(bad?.todo).toContain(part);
  });

  test("S1 a good camera has nothing to put right, and none at all says nothing of itself", () => {
    expect(cameraChecks(good).every(({ state }) => state === "ok")).toBe(true);
    expect(cameraChecks(null).every(({ state }) => state === "unknown")).toBe(true);
  });
});

describe("S3 speed", () => {
  // Turn per frame at 200 / 700 / 1650 degrees a second, and blur at 1/120, 1/500, 1/1000 s: derived, in the project's check values.
  test("S3 the reach of a rate follows from the turn per picture", () => {
    expect([5, 24, 30, 60, 120].map(reachOfRate)).toEqual(["none", "flow", "flow", "full", "full"]);
    expect([7, 20, 0].map(reachOfRate)).toEqual(["slow", "slow", "none"]);
  });

  test("S3 the reach of an exposure follows from the blur", () => {
    expect([1, 2, 5, 8.3, 17, 33].map(reachOfExposure)).toEqual(["full", "full", "flow", "slow", "slow", "none"]);
  });

  test("S3 a longer exposure or fewer pictures never reach farther", () => {
    const order = ["none", "slow", "flow", "full"];
    for (let step = 1; step < 200; step++) {
      expect(order.indexOf(reachOfExposure(step * 0.2))).toBeLessThanOrEqual(
        order.indexOf(reachOfExposure((step - 1) * 0.2)),
      );
      expect(order.indexOf(reachOfRate(step))).toBeGreaterThanOrEqual(order.indexOf(reachOfRate(step - 1)));
    }
  });

  test("S3 what is enough depends on the stage", () => {
    expect(rateCheck(28, "slow-rehearsal")).toMatchObject({ state: "ok", words: "28 pictures a second: up to flow" });
    expect(rateCheck(28, "ball")).toMatchObject({ state: "problem" });
    expect(rateCheck(60, "ball")).toMatchObject({ state: "ok", words: "60 pictures a second: full speed" });
    expect(rateCheck(0, null).state).toBe("unknown");
  });

  test("S3 where no exposure is told, only what a picture's time allows is promised", () => {
    const light = { brightness: 120, exposureMs: null, framesPerSecond: 60, hasTorch: false };
    expect(lightCheck(light, "slow-rehearsal")).toMatchObject({ state: "ok" });
    expect(lightCheck(light, "slow-rehearsal").words).toContain("at most 17 ms: slow rehearsals only for sure");
    expect(lightCheck(light, "ball").state).toBe("unknown");
    expect(lightCheck({ ...light, framesPerSecond: 30 }, "slow-rehearsal").state).toBe("unknown");
  });
});

test("S4 a dark picture is a problem whatever the exposure, and the phone's light is named only where it has one", () => {
  const dark = { brightness: 20, exposureMs: 1, framesPerSecond: 30, hasTorch: true };
  expect(lightCheck(dark, null)).toMatchObject({ state: "problem" });
  expect(lightCheck(dark, null).todo).toContain("this phone's light");
  expect(lightCheck({ ...dark, hasTorch: false }, null).todo).not.toContain("this phone's light");
});

describe("S8 the list", () => {
  test("S8 a good set-up has nothing left to do", () => {
    const checks = setUpChecks(facts);
    expect(checks.map(({ id, state }) => `${id} ${state}`).filter((line) => !line.endsWith(" ok"))).toEqual([]);
    expect(nextCheck(checks)).toBeNull();
  });

  test("S8 what is wrong comes before what is open", () => {
    const checks = setUpChecks({ ...facts, top: "never", spaceClear: false, view: { ...good, height: 2 } });
    expect(nextCheck(checks)?.id).toBe("camera-height");
    expect(nextCheck(setUpChecks({ ...facts, top: "never", spaceClear: false }))?.id).toBe("club-at-top");
    expect(nextCheck(setUpChecks({ ...facts, spaceClear: false }))?.id).toBe("space-clear");
  });

  test("S8 it keeps the order that the ground screen has, and each check has a sentence where it is not right", () => {
    const bad: SetUpFacts = {
      ...facts,
      view: { behindBall: 9, height: 2, aside: 1, roll: 9 },
      framing: "feet-out",
      top: "outside",
      rod: { is: "not-said" },
      light: { brightness: 10, exposureMs: 30, framesPerSecond: 5, hasTorch: false },
      calibration: "suspect",
      spaceClear: false,
    };
    const checks = setUpChecks(bad);
    expect(checks.map(({ id }) => id)).toEqual(setUpCheckIds.filter((id) => checks.some((check) => check.id === id)));
    expect(checks).toHaveLength(setUpCheckIds.length);
    for (const { state, todo } of checks) expect(state === "ok" || todo.length > 10).toBe(true);
  });

  test("S6 a clip and the demo golfer have no light and no space to look after", () => {
    const ids = setUpChecks({ ...facts, source: { kind: "demo" }, calibration: "demo" }).map(({ id }) => id);
    expect(ids).not.toContain("light");
    expect(ids).not.toContain("space-clear");
    expect(setUpChecks({ ...facts, source: null }).map(({ id }) => id)).toEqual(["certificate"]);
  });

  test("S7 the certificate's state is what the browser told, and none of the four stops the set-up", () => {
    const words = (["looking", "trusted", "by-hand", "cannot-tell"] as const).map((certificate) => {
      const [check] = setUpChecks({ ...facts, certificate });
      expect(check?.state === "ok" || check?.state === "unknown").toBe(true);
      return check?.words;
    });
    expect(new Set(words).size).toBe(4);
    expect(words[2]).toContain("by hand");
  });
});

test("S5 a rod's colour is asked for only where the rod belongs on the club, and none is an answer", () => {
  expect(rodCheck({ is: "not-said" }, true).state).toBe("not-yet");
  expect(rodCheck({ is: "not-said" }, false).state).toBe("ok");
  expect(rodCheck({ is: "none" }, true).state).toBe("ok");
});
