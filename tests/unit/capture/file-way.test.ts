import { expect, test } from "vitest";
import { iconPng } from "../../../client-capture/installed-app/icon-png.ts";
import { bars, dots } from "../../../client-capture/installed-app/icon-shapes.ts";
import { fileWay } from "@overcue/client-capture/workers/file-way";

test("S10 only hashed names are answered out of what is kept", () => {
  expect(fileWay("GET", "/phone/assets/phone-BG2LwRUB.js")).toBe("kept");
  for (const path of ["/phone/", "/phone/index.html", "/phone/pose/pose-landmarker-full.task", "/phone/icon.svg"]) {
    expect(fileWay("GET", path)).toBe("relay-first");
  }
});

test("S10 what names the build, what changes something and what is not the phone's page go to the relay alone", () => {
  expect(fileWay("GET", "/phone/build.json")).toBe("relay-only");
  expect(fileWay("GET", "/phone/service-worker.js")).toBe("relay-only");
  expect(fileWay("POST", "/phone/assets/phone-BG2LwRUB.js")).toBe("relay-only");
  expect(fileWay("GET", "/socket.io/?transport=polling")).toBe("relay-only");
  expect(fileWay("GET", "/ground/")).toBe("relay-only");
});

test("S10 the mark keeps within what every phone leaves of an icon", () => {
  // W3C maskable icons: the circle in the middle, two fifths of the width in radius, is never cut.
  for (const { from, to, width } of bars) {
    for (const [x, y] of [from, to]) expect(Math.hypot(x - 0.5, y - 0.5) + width / 2).toBeLessThanOrEqual(0.4);
  }
  for (const { at, radius } of dots) expect(Math.hypot(at[0] - 0.5, at[1] - 0.5) + radius).toBeLessThanOrEqual(0.4);
});

test("S10 a drawn icon is a PNG of the size that the manifest names", () => {
  const png = Buffer.from(iconPng(64));
  expect(png.subarray(1, 4).toString("latin1")).toBe("PNG");
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([64, 64]);
});
