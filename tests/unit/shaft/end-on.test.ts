import { beforeAll, expect, it } from "vitest";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { milliseconds, radians } from "@overcue/shared-geometry/units";
import { renderScene } from "../../scenes/render-scene.ts";
import { cleanScene } from "../scenes/scene-under-test.ts";

interface Seen {
  readonly now: ShaftInImage;
  /** What shows of the shaft, as a share of the picture's height. */
  readonly shows: number;
  readonly visible: number;
  readonly angle: number | null;
}

/** Of the picture's height: less than this is a dot with a club head on it, more than the other is a shaft. */
const dot = 1 / 40;
const shaft = 1 / 8;

let seen: Seen[];
beforeAll(() => {
  const settings = cleanScene("end-on", 21);
  let tracker = startShaftTracker({
    handed: settings.camera.handed,
    keepEvidence: milliseconds(0),
    lagged: false,
    rodAlong: false,
  });
  seen = [];
  for (const { picture, t, body, truth, visible, visiblePixels } of renderScene(settings, 21)) {
    const { state, output } = trackShaft(tracker, { picture, t, body });
    tracker = state;
    const shows = visiblePixels / picture.height;
    seen.push({ now: output.now, shows, visible, angle: truth?.angleInPicture ?? null });
  }
}, 120_000);

it("T25 a shaft that the camera looks along is lost, end-on, and no direction is made up for it", () => {
  const asDot = seen.filter(({ shows, visible }) => visible > 0.35 && shows < dot);
  expect(asDot.length).toBeGreaterThan(2);
  expect(asDot.map(({ now }) => now.status)).not.toContain("tracked");
  expect(asDot.map(({ now }) => (now.status === "lost" ? now.reason : now.status))).toContain("end-on");
});

it("T25 a shaft that comes out of end-on is found again, and the right way round", () => {
  const lastDot = seen.findIndex(({ shows, visible }) => visible > 0.35 && shows < dot);
  const after = seen.slice(lastDot).filter(({ shows, visible }) => visible > 0.6 && shows > shaft);
  const found = after.flatMap(({ now, angle }) =>
    now.status === "tracked" && angle !== null ? [Math.abs(wrapAngle(radians(now.angle - angle)))] : [],
  );
  expect(found.length).toBeGreaterThan(0.7 * after.length);
  expect(Math.max(...found)).toBeLessThan((6 * Math.PI) / 180);
});
