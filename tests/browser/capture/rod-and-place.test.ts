import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Locator, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { machineEffects } from "@overcue/server/machine-effects";
import { project } from "@overcue/shared-geometry/camera-project";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { fakeBook } from "../../relay/fakes.ts";
import { heardOf, joinRelay, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";
import { usualShow } from "../demo-golfer/demo-show.ts";
import { renderY4m } from "../demo-golfer/render-y4m.ts";
import { press, screen, startCamera } from "./phone-views.ts";

const size = { width: 540, height: 960 };

let folder: string;
let browser: Browser;
let relay: RunningRelay;
let coach: Joined;
let onTheRod: Point<"image">;

/** A golfer who stands still at address with an orange rod along the shaft. */
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-rod-"));
  const file = join(folder, "address.y4m");
  const { camera } = await renderY4m(file, { ...usualShow, ...size, framesPerSecond: 2, reps: 0, rodBeyondButt: 0.5 });
  const still = { golfer: usualGolfer, club: true, ball: false, items: [{ do: "still", seconds: 1 }] } as const;
  const { club } = demoMotion(still).at(0);
  if (club === null) throw new Error("no club");
  const { grip, toHead } = club;
  const seen = project(camera, worldPoint(grip.x + 0.3 * toHead.x, grip.y + 0.3 * toHead.y, grip.z + 0.3 * toHead.z));
  if (seen === null) throw new Error("behind the lens");
  onTheRod = seen;
  browser = await launchChromium({ fakeCamera: file });
  relay = await startRelay(machineEffects, fakeBook());
  coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret });
}, 120_000);
afterAll(async () => {
  coach.socket.close();
  await browser.close();
  await relay.close();
  await rm(folder, { recursive: true, force: true });
});

async function tap(page: Page, at: Point<"image">): Promise<void> {
  await page.locator('button[aria-pressed="true"]:has-text("Now tap the rod")').waitFor();
  const frame = page.locator(".picture .frame");
  // The list of what to do next may have moved the picture out of the window.
  await frame.scrollIntoViewIfNeeded();
  const box = await frame.boundingBox();
  if (box === null) throw new Error("no picture");
  const position = { x: (box.width * at.x) / size.width, y: (box.height * at.y) / size.height };
  await frame.click({ position, force: true });
}

const rodItem = (page: Page): Locator => page.locator("[data-check=rod-colour]");

const toldOfRod = (): string | undefined =>
  (heardOf(coach, "captureState").at(-1) as CaptureState).said?.["rod-colour"]?.words;

test("S5 S9 one tap teaches the rod's colour, a tap beside it changes nothing, and the place remembers it", async () => {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: { width: 360, height: 780 } });
  const page = await context.newPage();
  await page.goto(relay.page("capture"));
  await startCamera(page);
  await press(page, "Read, at: Range");
  await screen(page, "live");
  await page.locator(".set-up summary").click();
  await rodItem(page).waitFor();
  expect(await rodItem(page).textContent()).toBe("Rod colour not known");
  // Among what is to be done next, or else under “More”.
  if (!(await page.getByRole("button", { name: "Tap the rod" }).isVisible()))
    await page.locator(".more > summary").click();
  await press(page, "Tap the rod");
  // Before the first picture is measured a tap is told so, and has to be done again.
  await vi.waitFor(
    async () => {
      await tap(page, { x: 100, y: 60 });
      await page.getByText("Nothing there has a colour of its own").waitFor({ timeout: 3_000 });
    },
    { timeout: 90_000 },
  );
  expect(await rodItem(page).textContent()).toBe("Rod colour not known");
  await tap(page, onTheRod);
  await page.locator('[data-check=rod-colour][data-state="ok"]').waitFor();
  expect(await rodItem(page).textContent()).toBe("Rod colour known");
  await expect.poll(toldOfRod).toBe("Rod colour known");

  // Elsewhere nothing of it holds.
  await page.reload();
  await screen(page, "choose");
  await press(page, "Help, place and cautions");
  await page.locator(".place select").selectOption("Home mat");
  await press(page, "Back");
  await startCamera(page);
  await press(page, "Read, at: Home mat");
  await page.locator(".set-up summary").click();
  await rodItem(page).waitFor();
  expect(await rodItem(page).textContent()).toBe("Rod colour not known");
  await press(page, "Stop");
  await press(page, "Help, place and cautions");
  await page.locator(".place select").selectOption("Range");
  await press(page, "Back");

  await page.reload();
  await startCamera(page);
  await screen(page, "live");
  await page.locator(".set-up summary").click();
  expect(await rodItem(page).textContent()).toBe("Rod colour known");
  const kept = await page.evaluate(() => localStorage.getItem("overcue.places"));
  const { records } = JSON.parse(kept ?? "null") as {
    records: Record<string, { rod: { colour: { red: number; blue: number } } }>;
  };
  // Orange: much more red, much less blue than grey (ITU-R BT.601).
  expect(records["Range"]?.rod.colour.red).toBeGreaterThan(150);
  expect(records["Range"]?.rod.colour.blue).toBeLessThan(110);
}, 120_000);
