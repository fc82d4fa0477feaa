import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "puppeteer-core";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { machineEffects } from "@overcue/server/machine-effects";
import type { Role } from "@overcue/shared-geometry/wire/hello";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { captureState, liveEstimate, repOf, sure } from "../../fakes/practice-scenes.ts";
import { heardOf, joinRelay, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { findFirefox, launchFirefox } from "./launch-firefox.ts";

const firefox = await findFirefox();
/** For each step: the engine starts cold, and may share the machine. */
const patience = { timeout: 30_000 };

let browser: Browser;
let relay: RunningRelay;
let book: ReturnType<typeof openPracticeBook>;
let folder: string;
let joined: Joined[];
let complaints: string[];

if (firefox === null) console.log("skipped: no second engine (Debian and Ubuntu: apt install firefox-esr)");

describe.skipIf(firefox === null)("in Firefox", () => {
  beforeEach(async () => {
    folder = await mkdtemp(join(tmpdir(), "overcue-second-"));
    book = openPracticeBook(join(folder, "practice.book"), {
      now: () => machineEffects.relayTime(),
      newId: randomUUID,
    });
    relay = await startRelay(machineEffects, book);
    browser = await launchFirefox(firefox ?? "");
    joined = [];
    complaints = [];
  });
  afterEach(async () => {
    for (const { socket } of joined) socket.close();
    // A browser for each test: ending one is quicker here than closing a page that still loads.
    await browser.close();
    await relay.close();
    book.close();
    await rm(folder, { recursive: true, force: true });
  });

  test("pairing: the phone's page opens by its code, may ask for the camera, and is counted", async () => {
    const coach = await joinAs("coach");
    const phone = await open("capture", 390, 844);
    await phone.evaluateOnNewDocument(() => {
      addEventListener("securitypolicyviolation", ({ blockedURI }) => {
        (globalThis as { overcueBlocked?: string[] }).overcueBlocked ??= [];
        (globalThis as { overcueBlocked?: string[] }).overcueBlocked?.push(blockedURI);
      });
    });
    await phone.reload();
    await phone.waitForFunction(() => document.body.textContent.includes("Where is the golfer?"), patience);
    expect(
      await phone.evaluate(() => ({
        secure: isSecureContext,
        camera: typeof navigator.mediaDevices.getUserMedia,
        isolated: crossOriginIsolated,
      })),
    ).toEqual({ secure: true, camera: "function", isolated: true });
    await expect.poll(() => heardOf(coach, "peers").at(-1), patience).toMatchObject({ capture: 1 });
    expect(await phone.evaluate(() => (globalThis as { overcueBlocked?: string[] }).overcueBlocked ?? [])).toEqual([]);
  });

  test("ground screen: from the code to a word, a mark on the ground and the answer, by keys alone", async () => {
    const coach = await joinAs("coach");
    await coach.socket.emitWithAck("practice", { do: "start-practice" });
    const ground = await open("display", 1280, 800);
    await ground.waitForSelector("[data-screen=pairing] svg.qr-code", patience);
    const phone = await joinAs("capture");
    phone.socket.emit("captureState", captureState());
    await ground.waitForSelector("[data-screen=cautions]", patience);
    await ground.keyboard.press("Enter");
    await ground.waitForSelector("[data-screen=set-up]", patience);
    await ground.keyboard.press("Enter");
    await ground.waitForSelector("[data-screen=practice] canvas", patience);

    const emptyInk = await inkOf(ground);
    let sequence = 0;
    const timer = setInterval(() => {
      sequence++;
      const capturedAt = machineEffects.relayTime() - 40;
      // Past the shaft's level the butt point is aimed at.
      const moment = { x: 0, y: 0.22, band: sure("ball-to-toe"), checkpoint: "shaft-level-back" } as const;
      phone.socket.emit("estimate", liveEstimate(sequence, capturedAt, moment));
    }, 40);
    try {
      await ground.waitForSelector("[data-part=key-word][data-band=ball-to-toe]", patience);
      expect(await inkOf(ground)).toBeGreaterThan(emptyInk + 500);
    } finally {
      clearInterval(timer);
    }
    const rep = repOf(randomUUID(), machineEffects.relayTime(), 0.3, 0.01);
    expect(await phone.socket.emitWithAck("rep", rep)).toEqual({ ok: true });
    await ground.waitForSelector("[data-screen=verdict] .strip-mark", patience);
    await ground.keyboard.press("v");
    await expect
      .poll(() => (heardOf(coach, "practice").at(-1) as PracticeState).lastChange, patience)
      .toMatchObject({ by: "ground screen", what: "voided a rep" });
    expect(complaints).toEqual([]);
  });

  test("coach's page: drill, slider and note reach the book", async () => {
    const other = await joinAs("coach");
    const coach = await open("coach", 390, 844);
    await coach.waitForSelector("[data-screen=coach] select", patience);
    await coach.select("[data-screen=coach] select", "low-road-high-road");
    const state = () => heardOf(other, "practice").at(-1) as PracticeState;
    await expect.poll(() => state().drill.id, patience).toBe("low-road-high-road");
    // The page shows the first checkpoint at which something is exaggerated.
    const exaggerated = (): number => state().aims.find(({ exaggerateBy }) => exaggerateBy !== 0)?.exaggerateBy ?? NaN;
    const oneMore = (Math.round(exaggerated() * 100) + 1) / 100;
    await coach.focus(".aim-slider input[type=range]");
    await coach.keyboard.press("ArrowRight");
    await expect.poll(exaggerated, patience).toBeCloseTo(oneMore, 9);
    await coach.type("textarea", "Better when the first move is slow.");
    await coach.click("[data-screen=coach] form button[type=submit]:not([disabled])");
    await expect
      .poll(() => book.sessionView().notes.map(({ text }) => text), patience)
      .toEqual(["Better when the first move is slow."]);
    expect(await inkOf(coach)).toBeGreaterThan(1000);
    expect(complaints).toEqual([]);
  });
});

async function joinAs(role: "coach" | "capture"): Promise<Joined> {
  const one = await joinRelay(relay.origin, role, { secret: relay.application.secret });
  joined.push(one);
  return one;
}

async function open(role: Role, width: number, height: number): Promise<Page> {
  const page = await browser.newPage();
  // The phone's page is left before it has loaded its model, and says so.
  if (role === "capture") return await goTo(page, role, width, height);
  page.on("pageerror", (error) => complaints.push(error instanceof Error ? error.message : String(error)));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  return await goTo(page, role, width, height);
}

async function goTo(page: Page, role: Role, width: number, height: number): Promise<Page> {
  await page.setViewport({ width, height });
  await page.goto(relay.page(role));
  return page;
}

/** How many pixels of all canvases are painted. */
async function inkOf(page: Page): Promise<number> {
  return await page.evaluate(() => {
    let painted = 0;
    for (const canvas of document.querySelectorAll("canvas")) {
      const { data } = canvas.getContext("2d")?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
      for (let at = 3; at < data.length; at += 4) if ((data[at] ?? 0) > 0) painted++;
    }
    return painted;
  });
}
