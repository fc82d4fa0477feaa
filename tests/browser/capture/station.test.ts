import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { clipConfiguration } from "@overcue/client-capture/measure-page/clip-configuration";
import { machineEffects } from "@overcue/server/machine-effects";
import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { StationLine } from "@overcue/shared-geometry/station";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import type { StationFile } from "@overcue/client-capture/setup/station-file";
import { lineNames } from "@overcue/client-capture/setup/station-words";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { cameraOff } from "../../scenes/camera-off.ts";
import { fakeBook } from "../../relay/fakes.ts";
import { heardOf, joinRelay, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";
import { measureDistances, press, screen, startCamera } from "./phone-views.ts";
import { pictureSize, stationFilm, type Stand, type StationFilm } from "./station-film.ts";

let folder: string;
let film: StationFilm;
let browser: Browser;
let relay: RunningRelay;
let coach: Joined;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-station-"));
  film = await stationFilm(folder, ["default", "bumped", "near"]);
  browser = await launchChromium({ fakeCamera: film.file });
}, 120_000);
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  relay = await startRelay(machineEffects, fakeBook());
  coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret });
  return async () => {
    for (const context of browser.contexts()) await context.close();
    coach.socket.close();
    await relay.close();
  };
});

/** The phone's page with the sticks being set. */
async function openPhone(stand: Stand, only?: number): Promise<Page> {
  await film.put(stand, only);
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: { width: 360, height: 780 } });
  const page = await context.newPage();
  await page.goto(relay.page("capture"));
  await startCamera(page);
  await press(page, "Read, at: Range");
  await screen(page, "live");
  await press(page, "Set the sticks");
  await page.locator(".station .handle").first().waitFor({ timeout: 60_000 });
  return page;
}

/** What the phone remembers of its station. */
async function rememberedFile(page: Page): Promise<StationFile> {
  const kept = await page.evaluate(() => localStorage.getItem("overcue.station"));
  return JSON.parse(kept ?? "null") as StationFile;
}

/** The camera that follows from it. */
function solvedFrom(file: StationFile): Camera {
  const info = { kind: "camera", ...pictureSize, nominalFramesPerSecond: 2, zoom: 1, knownCamera: null } as const;
  const { camera } = clipConfiguration(file, info);
  if (camera === null) throw new Error("no camera");
  return camera;
}

/** Tells the page how the camera reads its picture. */
async function tellShutter(page: Page): Promise<void> {
  await page.locator(".station-form summary").click();
  await page.getByLabel("Rolling shutter, ms").fill("14");
  await page.getByLabel("It reads the picture").selectOption("from the top down");
  await page.locator(".station-form summary").click();
}

function cameraAt(stand: Stand): Camera {
  const camera = film.cameras.get(stand);
  if (camera === undefined) throw new Error(`not filmed from ${stand}`);
  return camera;
}

/** Within so many centimetres, and half a degree. */
function expectNear(found: Camera, truth: Camera, centimetres: number): void {
  const { metres, degrees } = cameraOff(found, truth);
  expect(100 * metres).toBeLessThan(centimetres);
  expect(degrees).toBeLessThan(0.5);
}

/**
 * How far the magnifier's pixels are from those of the picture about the mark that is dragged, on average, grey levels; more than any could be where it
 * is not shown, or lies over the mark.
 */
function magnified(): number {
  const glass = document.querySelector<HTMLCanvasElement>(".magnifier");
  const picture = document.querySelector<HTMLCanvasElement>(".sheet canvas");
  const handle = document.activeElement;
  const sheet = document.querySelector(".sheet")?.getBoundingClientRect();
  if (glass === null || glass.hidden || picture === null || handle === null || sheet === undefined) return 1000;
  const mark = handle.getBoundingClientRect();
  const box = glass.getBoundingClientRect();
  const [x, y] = [mark.x + mark.width / 2, mark.y + mark.height / 2];
  if (x > box.left && x < box.right && y > box.top && y < box.bottom) return 1000;
  const at = [((x - sheet.x) / sheet.width) * picture.width, ((y - sheet.y) / sheet.height) * picture.height] as const;
  const [small, large] = [picture.getContext("2d"), glass.getContext("2d")];
  if (small === null || large === null) return 1000;
  let sum = 0;
  let count = 0;
  // Three pixels of the glass for one of the picture; off the hairs that mark its middle.
  for (const across of [-24, -13, -6, 7, 15, 26]) {
    for (const down of [-25, -12, -7, 6, 14, 23]) {
      const from = small.getImageData(Math.floor(at[0] + across + 0.5), Math.floor(at[1] + down + 0.5), 1, 1).data;
      const to = large.getImageData(glass.width / 2 + 3 * across + 1, glass.height / 2 + 3 * down + 1, 1, 1).data;
      if (from[3] === 0) continue;
      sum += Math.abs((from[1] ?? 0) - (to[1] ?? 0));
      count++;
    }
  }
  return sum / count;
}

/** Drags a mark with the mouse to a place in the picture; what lies under it is seen larger meanwhile. */
async function dragHandle(page: Page, name: string, to: Point<"image">): Promise<void> {
  const handle = page.getByRole("button", { name, exact: true });
  const box = await handle.boundingBox();
  const sheet = await page.locator(".sheet").boundingBox();
  if (box === null || sheet === null) throw new Error("not on the page");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  const { width, height } = pictureSize;
  await page.mouse.move(sheet.x + (sheet.width * to.x) / width, sheet.y + (sheet.height * to.y) / height, { steps: 3 });
  expect(await page.evaluate(magnified)).toBeLessThan(1);
  await page.mouse.up();
  await page.locator(".magnifier").waitFor({ state: "hidden" });
}

const told = (): CaptureState | undefined => heardOf(coach, "captureState").at(-1) as CaptureState | undefined;

async function saidOnBoth(phone: Page, ground: Page, sentence: string): Promise<void> {
  await Promise.all([
    phone.locator(`.warning:has-text("${sentence}")`).waitFor({ timeout: 60_000 }),
    ground.locator(`.notice:has-text("${sentence}")`).waitFor({ timeout: 60_000 }),
  ]);
}

/** What everything read so far was marked with. */
const sentCalibrations = (): readonly string[] =>
  (heardOf(coach, "estimate") as Estimate[]).map(({ calibration }) => calibration);

describe("setting the sticks on the phone's page", () => {
  test("P7 W3 S14 finds the demo golfer's station while the golfer walks about, and when the phone is bumped says so on both screens and finds its place again", async () => {
    const page = await openPhone("default");
    await measureDistances(page);
    await page.locator(".station .mark-good").waitFor();
    await tellShutter(page);
    await press(page, "Use these sticks");
    const remembered = await rememberedFile(page);
    expectNear(solvedFrom(remembered), cameraAt("default"), 5);
    expect(remembered.rollingShutter).toStrictEqual({ milliseconds: 14, towards: "down" });

    const ground = await page.context().newPage();
    await ground.addInitScript(() => {
      localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true }));
    });
    await ground.goto(relay.page("display"));
    await expect.poll(() => told()?.calibration, { timeout: 20_000 }).toBe("station");
    // The golfer stands on the sticks: that something moved is seen, where the phone is now is not.
    await film.put("bumped", 0);
    await saidOnBoth(page, ground, "The phone or the sticks were moved: set the sticks again.");
    await expect.poll(() => sentCalibrations().at(-1), { timeout: 20_000 }).toBe("suspect");
    await film.put("bumped", 7);
    await saidOnBoth(page, ground, "The phone was moved, and its place was found again from the sticks.");
    await expect.poll(() => sentCalibrations().at(-1), { timeout: 20_000 }).toBe("station");
  }, 120_000);

  test("P2 S3 S14 a stick with an end under a foot or out of the picture serves as a line, under handles that a thumb finds and a magnifier", async () => {
    const page = await openPhone("default", 3);
    await measureDistances(page);
    for (const size of [
      { width: 360, height: 780 },
      { width: 780, height: 360 },
    ]) {
      await page.setViewportSize(size);
      const handles = await page.locator(".station .handle").all();
      expect(handles).toHaveLength(6);
      for (const handle of handles) {
        const box = await handle.boundingBox();
        // WCAG 2.2, 2.5.5: 44 CSS pixels.
        expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
      }
    }
    await page.setViewportSize({ width: 360, height: 780 });
    await markSticks(page, "default", { "heel-line": [0, 0.3] });
    await expectCamera(page, "default", [["heel-line", "far"]]);

    await film.put("near", 7);
    await press(page, "Set the sticks");
    await page.locator(".station .handle").first().waitFor({ timeout: 30_000 });
    await markSticks(page, "near", { "heel-line": [0.4, 1], "toe-line": [0.4, 1] });
    await expectCamera(page, "near", [
      ["toe-line", "near"],
      ["heel-line", "near"],
    ]);
  }, 120_000);
});

/** Drags each stick's marks to its ends, or to the given shares of its length. */
async function markSticks(
  page: Page,
  stand: Stand,
  shown: Partial<Record<StationLine, readonly [number, number]>>,
): Promise<void> {
  const camera = cameraAt(stand);
  const { station } = usualGolfer;
  for (const line of station.sticksPresent) {
    const { near, far } = stickEnds(line, station, [0, 0, 0]);
    const [from, to] = shown[line] ?? [0, 1];
    const at = (share: number): Point<"image"> => {
      const seen = project(camera, worldPoint(near.x + share * (far.x - near.x), near.y, near.z));
      if (seen === null) throw new Error("behind the lens");
      return seen;
    };
    await dragHandle(page, `${lineNames[line]}, near end`, at(from));
    await dragHandle(page, `${lineNames[line]}, far end`, at(to));
  }
}

/** Uses the sticks: the camera that they give is the true one, and just these ends were taken for hidden. */
async function expectCamera(page: Page, stand: Stand, hidden: readonly (readonly [StationLine, string])[]) {
  await page.locator(".station .mark-good").waitFor();
  await press(page, "Use these sticks");
  const file = await rememberedFile(page);
  expect(file.sticks.flatMap(({ line, hidden: ends = [] }) => ends.map((end) => [line, end]))).toEqual(hidden);
  expectNear(solvedFrom(file), cameraAt(stand), 15);
}
