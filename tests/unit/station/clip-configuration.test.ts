import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { clipConfiguration } from "@overcue/client-capture/measure-page/clip-configuration";

const page = readFileSync(new URL("../../../docs/station-file.md", import.meta.url), "utf8");
const example = /```json\n([^`]*)```/.exec(page)?.[1] ?? "";
const source = {
  kind: "clip",
  width: 720,
  height: 1280,
  nominalFramesPerSecond: 30,
  zoom: 1,
  knownCamera: null,
} as const;

describe("a clip's station file", () => {
  it("takes the documented example and solves its camera", () => {
    const { calibration, camera } = clipConfiguration(JSON.parse(example), source);
    expect(calibration).toBe("station");
    expect(camera?.position.x).toBeGreaterThan(-5);
    expect(camera?.position.x).toBeLessThan(-3);
  });

  it("takes how the camera reads its picture where the file says so", () => {
    expect(clipConfiguration(JSON.parse(example), source).shutter).toBeUndefined();
    const rollingShutter = { milliseconds: 14, towards: "left" };
    const told = clipConfiguration({ ...(JSON.parse(example) as object), rollingShutter }, source);
    expect(told.shutter).toStrictEqual({ time: 14, towards: "left" });
  });

  it.each([
    ["a list", [], /cannot be used: as a whole, .*docs\/station-file\.md/],
    ["no sticks", { ...(JSON.parse(example) as object), sticks: "none" }, /cannot be used: at sticks, /],
    [
      "a picture that is read slower than the next one comes",
      { ...(JSON.parse(example) as object), rollingShutter: { milliseconds: 400, towards: "down" } },
      /cannot be used: at rollingShutter\.milliseconds, /,
    ],
    ["one stick", { ...(JSON.parse(example) as object), sticks: [] }, /gives no camera: Fewer than two sticks/],
  ])("says in a sentence what is wrong with %s", (_, file, sentence) => {
    expect(() => clipConfiguration(file, source)).toThrow(sentence);
  });
});
