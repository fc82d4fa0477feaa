import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { angleOfHeight, capitalShare } from "@overcue/client-display/sizes/viewing-sizes";
import { metres, pixels } from "@overcue/shared-geometry/units";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { fakeBattery, fakeWakeLock } from "../../fakes/phone-device.ts";
import { fakeBook, type FakeBook } from "../../relay/fakes.ts";
import { heardOf, joinRelay, type Joined } from "../../relay/join-relay.ts";
import { sampleRep } from "../../relay/sample-messages.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { machineEffects } from "@overcue/server/machine-effects";
import { launchChromium } from "../chromium.ts";
import { measureTexts } from "../display/measure-texts.ts";
import { phoneViews, press, screen, startCamera } from "./phone-views.ts";
import { shortFilm } from "./short-film.ts";

let folder: string;
let browser: Browser;
let relay: RunningRelay;
let book: FakeBook;
let coach: Joined;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-phone-"));
  browser = await launchChromium({ fakeCamera: await shortFilm(folder) });
}, 300_000);
afterAll(async () => {
  await browser.close();
  await rm(folder, { recursive: true, force: true });
});
beforeEach(async () => {
  book = fakeBook();
  relay = await startRelay(machineEffects, book);
  coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret });
  return async () => {
    for (const context of browser.contexts()) await context.close();
    coach.socket.close();
    await relay.close();
  };
});

/** A phone of that size that was never here before; `before`: what is put in place before its first script. */
async function openPhone(
  size: { readonly width: number; readonly height: number },
  before: (page: Page) => Promise<void> = () => Promise.resolve(),
): Promise<Page> {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: size });
  const page = await context.newPage();
  await before(page);
  await page.goto(relay.page("capture"));
  return page;
}

/** The phone's state as the screens were told it last, once it is as wanted. */
async function toldOnce(isSo: (state: CaptureState) => boolean): Promise<CaptureState> {
  for (let tries = 0; tries < 600; tries++) {
    const told = heardOf(coach, "captureState").at(-1) as CaptureState | undefined;
    if (told !== undefined && isSo(told)) return told;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error(`never told so; the last was ${JSON.stringify(heardOf(coach, "captureState").at(-1))}`);
}

const sizes = [
  { width: 360, height: 780, pixelsPerMillimetre: 160 / 25.4 },
  { width: 780, height: 360, pixelsPerMillimetre: 160 / 25.4 },
  // Tablets have about 132 of these pixels to the inch, laptops 96.
  { width: 820, height: 1180, pixelsPerMillimetre: 132 / 25.4 },
  { width: 1280, height: 800, pixelsPerMillimetre: 96 / 25.4 },
];

/** Complaints about a view at the size that the page has: axe's, and what sticks out at the side. */
async function complaintsAbout(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  return [
    ...violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`),
    ...(wider > 0 ? [`${String(wider)} pixels stick out`] : []),
  ];
}

/** What of the practice view cannot be read from three metres, or is cut off. */
async function unreadable(page: Page, pixelsPerMillimetre: number): Promise<readonly string[]> {
  const viewing = { distance: metres(3), pixelsPerMillimetre };
  const [word] = await measureTexts(page, [".status .word"]);
  const [shape] = await measureTexts(page, [".status svg"]);
  if (word === undefined || shape === undefined) return ["no word or no shape"];
  const ofWord = angleOfHeight(pixels(word.size * capitalShare), viewing);
  const ofShape = angleOfHeight(pixels(shape.size), viewing);
  return [
    ...(word.whole && shape.whole ? [] : ["something is cut off"]),
    ...(ofWord >= 20 ? [] : [`the word subtends ${ofWord.toFixed(1)} arc minutes`]),
    ...(ofShape >= 40 ? [] : [`the shape subtends ${ofShape.toFixed(1)} arc minutes`]),
  ];
}

test("D4 D5 S13 every view, upright and across, on phone, tablet and laptop: axe is content, nothing sticks out, and the word and shape of practice are read from 3 m", async () => {
  const page = await openPhone({ width: 360, height: 780 });
  const complaints: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  let looked = 0;
  for (const { name, open } of phoneViews) {
    await page.setViewportSize({ width: 360, height: 780 });
    await open(page);
    await page.evaluate(() => document.fonts.ready);
    for (const { width, height, pixelsPerMillimetre } of sizes) {
      await page.setViewportSize({ width, height });
      const found = await complaintsAbout(page);
      if (name === "practice") found.push(...(await unreadable(page, pixelsPerMillimetre)));
      complaints.push(...found.map((each) => `${name} at ${String(width)} x ${String(height)}: ${each}`));
      looked++;
    }
  }
  expect(complaints).toEqual([]);
  expect(looked).toBe(phoneViews.length * sizes.length);
});

const phone = { width: 390, height: 844 };

describe("while a source runs", () => {
  test("S11 the screen is kept on from the first picture to the last, and a low battery is said", async () => {
    let locks: () => Promise<{ asked: number; let: number }> = () => Promise.reject(new Error("not watched"));
    const page = await openPhone(phone, async (opened) => {
      locks = await fakeWakeLock(opened);
      await fakeBattery(opened, 0.11);
    });
    await startCamera(page);
    await press(page, "Read, at: Range");
    await page.locator('.warning:has-text("Battery at 11 %")').waitFor({ timeout: 60_000 });
    expect(await locks()).toEqual({ asked: 1, let: 0 });
    const { battery, warnings } = await toldOnce((state) => state.warnings.length > 0);
    expect(battery).toBe(0.11);
    expect(warnings.join(" ")).toContain("plug the phone in");
    await press(page, "Stop");
    await expect.poll(locks).toEqual({ asked: 1, let: 1 });
  });

  test("S12 a rep that the relay cannot take stays on the phone, over a reload, until it is on the relay's disk", async () => {
    book.failsWith = "the disk is full";
    const page = await openPhone(phone);
    await screen(page, "choose");
    const rep = { ...sampleRep(), id: randomUUID() };
    await page.evaluate(async (kept) => {
      await new Promise<void>((resolve, reject) => {
        const asked = indexedDB.open("overcue-phone");
        asked.onerror = () => {
          reject(new Error("no database"));
        };
        asked.onsuccess = () => {
          const change = asked.result.transaction("unsent-reps", "readwrite");
          change.objectStore("unsent-reps").put(kept);
          change.oncomplete = () => {
            asked.result.close();
            resolve();
          };
        };
      });
    }, rep);
    await page.reload();
    await page.getByText("1 rep kept here until the relay takes them").waitFor();
    expect(book.reps.size).toBe(0);
    book.failsWith = null;
    await page.reload();
    await expect.poll(() => [...book.reps.keys()], { timeout: 20_000 }).toEqual([rep.id]);
    await page.reload();
    await screen(page, "choose");
    await page.getByText("Paired, no ground screen open").waitFor();
    await expect.poll(() => page.getByText("kept here until").count()).toBe(0);
  });
});
