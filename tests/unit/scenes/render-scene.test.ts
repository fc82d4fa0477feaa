import type { Picture } from "@overcue/client-capture/picture/picture";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { describe, expect, it } from "vitest";
import { sceneOf } from "../../scenes/conditions.ts";
import { renderScene, type SceneFrame } from "../../scenes/render-scene.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";
import { cleanScene } from "./scene-under-test.ts";

const framesAt = (settings: SceneSettings, seed: number, fromMs: number, count: number): readonly SceneFrame[] => {
  const step = 1000 / settings.framesPerSecond;
  return [...renderScene({ ...settings, fromMs, toMs: fromMs + (count + 0.5) * step }, seed)];
};

/** The one frame of a scene at a moment. */
function frameAt(settings: SceneSettings, seed: number, tMs: number): SceneFrame {
  const [frame] = framesAt(settings, seed, tMs, 1);
  if (!frame) throw new Error("no frame");
  return frame;
}

/** Line through what the club added to the picture, weighted by how much it changed it, between two shares of the way to the head. */
function lineOfDifference(a: Picture, b: Picture, frame: SceneFrame, from: number, to: number, reach: number) {
  const { truth } = frame;
  if (!truth) throw new Error("no club");
  const [gx, gy] = [truth.gripInPicture.x, truth.gripInPicture.y];
  const [dx, dy] = [truth.headInPicture.x - gx, truth.headInPicture.y - gy];
  const length = Math.hypot(dx, dy);
  let [sum, sx, sy, sxx, sxy, syy] = [0, 0, 0, 0, 0, 0];
  for (let row = 0; row < a.height; row++) {
    for (let column = 0; column < a.width; column++) {
      const [px, py] = [column + 0.5 - gx, row + 0.5 - gy];
      const along = (px * dx + py * dy) / length / length;
      const across = Math.abs(px * dy - py * dx) / length;
      if (along < from || along > to || across > reach) continue;
      const at = row * a.width + column;
      const weight = Math.abs((a.luma[at] ?? 0) - (b.luma[at] ?? 0));
      if (weight < 3) continue;
      sum += weight;
      sx += weight * px;
      sy += weight * py;
      sxx += weight * px * px;
      sxy += weight * px * py;
      syy += weight * py * py;
    }
  }
  const vxx = sxx / sum - (sx / sum) ** 2;
  const vyy = syy / sum - (sy / sum) ** 2;
  const vxy = sxy / sum - (sx / sum) * (sy / sum);
  const axis = 0.5 * Math.atan2(2 * vxy, vxx - vyy);
  const turn = Math.cos(axis) * dx + Math.sin(axis) * dy >= 0 ? axis : axis + Math.PI;
  const spread = Math.sqrt(
    Math.max(0, Math.sin(axis) ** 2 * vxx + Math.cos(axis) ** 2 * vyy - Math.sin(2 * axis) * vxy),
  );
  return { angle: turn, spread, offset: Math.abs((sx / sum) * Math.sin(axis) - (sy / sum) * Math.cos(axis)) };
}

/** A moment on the way down between lead arm level and shaft level: the shaft turns fast in the picture and is well seen. */
function comingDown(settings: SceneSettings): number {
  const found = demoMotion(settings.plan).checkpoints.find(({ checkpoint }) => checkpoint === "arm-level-down");
  if (!found) throw new Error("no such checkpoint");
  return found.t + 30;
}

const degreesApart = (a: number, b: number): number =>
  Math.abs((Math.atan2(Math.sin(a - b), Math.cos(a - b)) * 180) / Math.PI);

/** The same scene with the same golfer and nothing in the hands. */
const withoutClub = (settings: SceneSettings): SceneSettings => ({
  ...settings,
  plan: { ...settings.plan, club: false },
});

describe("a rendered scene", () => {
  it("is the same to the byte for the same seed, and another for another", () => {
    const settings = sceneOf("small 240x384", 1);
    const [one, again, other] = [frameAt(settings, 1, 900), frameAt(settings, 1, 900), frameAt(settings, 2, 900)];
    expect(Buffer.compare(one.picture.luma, again.picture.luma)).toBe(0);
    expect(one.body).toEqual(again.body);
    expect(Buffer.compare(one.picture.luma, other.picture.luma)).not.toBe(0);
  });

  it("shows the shaft where the truth says: within half a degree and half a pixel", () => {
    const club = { ...sceneOf("slow+bare", 4).club, shaft: "graphite" } as const;
    const settings = cleanScene("slow+bare", 4, { subFrames: 1, place: "tee", light: "shade", club });
    for (const t of [300, 1500, 2000]) {
      const frame = frameAt(settings, 4, t);
      const bare = frameAt(withoutClub(settings), 4, t);
      const line = lineOfDifference(frame.picture, bare.picture, frame, 0.35, 0.85, 4);
      expect(degreesApart(line.angle, frame.truth?.angleInPicture ?? NaN)).toBeLessThan(0.5);
      expect(line.offset).toBeLessThan(0.5);
    }
  });

  it("skews a fast shaft by its row by row read-out, and says so in its truth", () => {
    const settings = cleanScene("full 60 1/500", 2, {
      subFrames: 4,
      exposureMs: 0.5,
      bowAtFullSpeed: 0,
      place: "tee",
      light: "shade",
    });
    const t = comingDown(settings);
    const rolling = frameAt({ ...settings, readOutMs: 20 }, 2, t);
    const at = frameAt({ ...settings, readOutMs: 0 }, 2, t);
    const bare = frameAt({ ...withoutClub(settings), readOutMs: 20 }, 2, t);
    const skew = degreesApart(rolling.truth?.angleInPicture ?? NaN, at.truth?.angleInPicture ?? NaN);
    expect(skew).toBeGreaterThan(0.3);
    const line = lineOfDifference(rolling.picture, bare.picture, rolling, 0.35, 0.9, 8);
    expect(degreesApart(line.angle, rolling.truth?.angleInPicture ?? NaN)).toBeLessThan(Math.max(0.3, skew / 3));
  });

  it("spreads a moving shaft over its exposure, evenly about the truth", () => {
    const settings = cleanScene("full 60 1/500", 2, {
      readOutMs: 0,
      bowAtFullSpeed: 0,
      place: "tee",
      light: "shade",
    });
    const t = comingDown(settings);
    const widthAt = (exposureMs: number): number => {
      const blurred = { ...settings, exposureMs, subFrames: 12 };
      const frame = frameAt(blurred, 2, t);
      const bare = frameAt(withoutClub(blurred), 2, t);
      return lineOfDifference(frame.picture, bare.picture, frame, 0.5, 0.9, 20).spread;
    };
    expect(widthAt(6)).toBeGreaterThan(widthAt(0.5) * 1.5);
  });

  it("says that nothing is there with empty hands, and counts a level shaft seen end-on as hardly visible", () => {
    const empty = frameAt(cleanScene("empty hands", 1), 1, 500);
    expect(empty.truth).toBeNull();
    expect(empty.visible).toBe(0);
    const endOn = framesAt({ ...cleanScene("end-on", 1), framesPerSecond: 20 }, 1, 500, 60);
    expect(Math.min(...endOn.map((frame) => frame.visiblePixels))).toBeLessThan(0.04 * 640);
    expect(Math.max(...endOn.map((frame) => frame.visiblePixels))).toBeGreaterThan(0.1 * 640);
  });

  it("bands the picture with the lamps' flicker and averages it away over a whole period of them", () => {
    const settings = cleanScene("indoor flicker", 1);
    const rowsOf = (exposureMs: number): number => {
      const { picture } = frameAt({ ...settings, exposureMs }, 1, 0);
      const mean = (row: number): number => {
        let sum = 0;
        for (let column = 0; column < 100; column++) sum += picture.luma[row * picture.width + column] ?? 0;
        return sum / 100;
      };
      const still = frameAt({ ...settings, exposureMs, sensor: { ...settings.sensor, flicker: 0 } }, 1, 0).picture;
      let most = 0;
      for (let row = 50; row < 600; row += 25) {
        let level = 0;
        for (let column = 0; column < 100; column++) level += still.luma[row * still.width + column] ?? 0;
        most = Math.max(most, Math.abs(mean(row) - level / 100));
      }
      return most;
    };
    expect(rowsOf(3)).toBeGreaterThan(8);
    expect(rowsOf(10)).toBeLessThan(2);
  });
});
