import { describe, expect, it } from "vitest";
import { findSticks } from "@overcue/client-capture/station/find-sticks";
import { medianPicture } from "@overcue/client-capture/station/median-picture";
import { snapStick } from "@overcue/client-capture/station/snap-stick";
import {
  startWatch,
  watchStation,
  type StationNews,
  type StationWatch,
} from "@overcue/client-capture/station/watch-station";
import type { Camera } from "@overcue/shared-geometry/camera";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import { angleApart } from "@overcue/shared-geometry/rotation";
import type { Handed } from "@overcue/shared-geometry/station";
import { uprightPhone } from "./upright-phone.ts";
import { lawnPicture, type Ends, type Lawn } from "./lawn-picture.ts";

const orange = [232, 108, 30] as const;
const white = [236, 236, 230] as const;

const phone = (handed: Handed, x = -3.5, roll = 0.01): Camera =>
  uprightPhone([x, 0.5, 1], [0.6, 0.45, 0.5], roll, handed);

const lawnOf = (change: Partial<Lawn> = {}): Lawn => ({
  camera: phone("right"),
  settings: defaultStation("7-iron", "right"),
  stickColour: orange,
  seed: 1,
  ...change,
});

function acrossOf({ near, far }: Ends, point: Point<"image">): number {
  const [dx, dy] = [far.x - near.x, far.y - near.y];
  return Math.abs((point.x - near.x) * dy - (point.y - near.y) * dx) / Math.hypot(dx, dy);
}

function endsOf(ends: ReadonlyMap<string, Ends>, line: string): Ends {
  const found = ends.get(line);
  if (!found) throw new Error(`no ${line}`);
  return found;
}

describe("snapping a stick", () => {
  it.each([
    ["orange", orange],
    ["white", white],
    ["yellow", [226, 205, 40]],
  ] as const)(
    "P1 puts an %s stick's line to a quarter of a pixel and its ends to one and a half, from handles 6 px off",
    (_, colour) => {
      const { picture, ends } = lawnPicture(lawnOf({ stickColour: colour }));
      for (const [line, truth] of ends) {
        const off = (point: Point<"image">, by: number) => imagePoint(point.x + by, point.y + 4);
        const snapped = snapStick(picture, "ball-line", off(truth.near, 6), off(truth.far, -5));
        if (!snapped.ok) throw new Error(`${line}: ${snapped.reason}`);
        const { near, far } = snapped.stick;
        expect(acrossOf(truth, near.at)).toBeLessThan(0.25);
        expect(acrossOf(truth, far.at)).toBeLessThan(0.25);
        expect(Math.hypot(near.at.x - truth.near.x, near.at.y - truth.near.y)).toBeLessThan(1.5);
        expect(Math.hypot(far.at.x - truth.far.x, far.at.y - truth.far.y)).toBeLessThan(1.5);
        expect([near.isEnd, far.isEnd]).toStrictEqual([true, true]);
      }
    },
  );

  it("P2 takes an end under a shoe for a line only", () => {
    const plain = lawnPicture(lawnOf());
    const toe = endsOf(plain.ends, "toe-line");
    const { picture } = lawnPicture(lawnOf({ shoes: [{ x: toe.far.x, y: toe.far.y + 8, radius: 20 }] }));
    const snapped = snapStick(picture, "toe-line", toe.near, toe.far);
    if (!snapped.ok) throw new Error(snapped.reason);
    expect(snapped.stick.near.isEnd).toBe(true);
    expect(snapped.stick.far.isEnd).toBe(false);
    expect(acrossOf(toe, snapped.stick.near.at)).toBeLessThan(0.3);
  });

  it.each([
    ["nothing-bright-there", imagePoint(560, 1100), imagePoint(560, 1000)],
    ["too-short", imagePoint(300, 900), imagePoint(302, 895)],
  ] as const)("P3 says %s", (reason, near, far) => {
    expect(snapStick(lawnPicture(lawnOf()).picture, "toe-line", near, far)).toStrictEqual({ ok: false, reason });
  });
});

describe("finding the station", () => {
  it.each(["right", "left"] as const)("P4 finds, names and solves three sticks by itself, %s-handed", (handed) => {
    const camera = phone(handed);
    const settings = defaultStation("7-iron", handed);
    const { picture, ends } = lawnPicture(lawnOf({ camera, settings }));
    const found = findSticks(picture, settings);
    if (!found.found) throw new Error(found.reason);
    for (const stick of found.sticks) expect(acrossOf(endsOf(ends, stick.line), stick.near.at)).toBeLessThan(1);
    const { position, rotation } = found.solution.camera;
    expect(Math.hypot(position.y - camera.position.y, position.z - camera.position.z)).toBeLessThan(0.05);
    expect(angleApart(rotation, camera.rotation)).toBeLessThan((0.5 * Math.PI) / 180);
  });

  it("P5 finds nothing on a bare lawn", () => {
    const bare = lawnPicture(lawnOf({ settings: { ...defaultStation("7-iron", "right"), sticksPresent: [] } })).picture;
    expect(findSticks(bare, defaultStation("7-iron", "right")).found).toBe(false);
  });

  it("P6 a middle picture has no trace of what covered a place for less than half of the time", () => {
    const still = lawnPicture(lawnOf()).picture;
    const covered = lawnPicture(lawnOf({ shoes: [{ x: 300, y: 900, radius: 30 }] })).picture;
    expect(medianPicture([still, covered, still]).luma).toStrictEqual(still.luma);
  });
});

describe("watching the station", () => {
  const settings = defaultStation("7-iron", "right");
  const laid = findSticks(lawnPicture(lawnOf()).picture, settings);
  const begin = () => {
    if (!laid.found) throw new Error(laid.reason);
    return startWatch(settings, laid.sticks);
  };
  function follow(lawns: readonly Lawn[]): { news: StationNews[]; watch: StationWatch } {
    let watch = begin();
    const news = lawns.map((lawn) => {
      const next = watchStation(watch, lawnPicture(lawn).picture);
      watch = next.state;
      return next.output;
    });
    return { news, watch };
  }

  it("W1 says steady while nothing moves, whatever the grass does, and with one stick under a foot", () => {
    const toe = endsOf(lawnPicture(lawnOf()).ends, "toe-line");
    const middle = { x: (toe.near.x + toe.far.x) / 2, y: (toe.near.y + toe.far.y) / 2, radius: 60 };
    const { news, watch } = follow([lawnOf({ seed: 2 }), lawnOf({ seed: 3, shoes: [middle] })]);
    expect(news).toStrictEqual([{ news: "steady" }, { news: "steady" }]);
    expect(watch.calibration).toBe("station");
  });

  it("W2 tells of a kicked stick on the second check, and that it is back", () => {
    const kicked = { "heel-line": [0, 0.06, 0.05] } as const;
    const out = follow([lawnOf({ seed: 2, laid: kicked }), lawnOf({ seed: 3, laid: kicked })]);
    expect(out.news).toStrictEqual([{ news: "wait" }, { news: "stick-moved", line: "heel-line" }]);
    expect(out.watch.calibration).toBe("suspect");
    const back = watchStation(out.watch, lawnPicture(lawnOf({ seed: 4 })).picture);
    expect(back.output).toStrictEqual({ news: "steady" });
    expect(back.state.calibration).toBe("station");
  });

  it("W3 tells of a bumped phone on the second check and solves it again by itself", () => {
    const bumped = uprightPhone([-3.5, 0.52, 1], [0.6, 0.51, 0.5], 0.015);
    const { news, watch } = follow([lawnOf({ seed: 2, camera: bumped }), lawnOf({ seed: 3, camera: bumped })]);
    expect(news.map((item) => item.news)).toStrictEqual(["wait", "phone-moved"]);
    const last = news.at(-1);
    const solution = last?.news === "phone-moved" ? last.solution : null;
    expect(solution).not.toBeNull();
    expect(angleApart(solution?.camera.rotation ?? phone("right").rotation, bumped.rotation)).toBeLessThan(
      (0.5 * Math.PI) / 180,
    );
    expect(watch.calibration).toBe("station");
  });
});
