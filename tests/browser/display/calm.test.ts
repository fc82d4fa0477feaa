import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { checkpointTold, practiceState, readingAt, repIds, sure } from "../../fakes/practice-scenes.ts";
import { repMs, runEstimate } from "../../fakes/practice-run.ts";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { countFlashes, type LuminanceFrame } from "./count-flashes.ts";
import { builtPages } from "./pages-folder.ts";
import { demoVerdict, setStage, views } from "./views.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

/** One picture every 50 ms of the page's own time, which stands still in between. */
const step = 50;
const length = 2.4 * repMs;

test("D15 a recorded practice run does not flash: live reps, checkpoints, a pause and an answer", async () => {
  let time = 1_790_000_000_000;
  const relay = await startScriptedRelay({ pages: builtPages(), clock: () => time });
  const [first] = views;
  if (first === undefined) throw new Error("no views");
  setStage(relay, first);
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  const page = await browser.newPage({ viewport: { width: 640, height: 400 } });
  const eye = await browser.newPage();
  try {
    await page.addInitScript(() => {
      localStorage.setItem(
        "overcue-screen",
        JSON.stringify({ cautionsRead: true, viewingDistance: 1.4, theme: "dim" }),
      );
    });
    await page.clock.install({ time });
    await page.goto(relay.address("ground"));
    await page.waitForSelector("[data-screen=set-up]");
    await page.click("[data-main]");
    await page.waitForSelector("[data-screen=practice]");
    const frames: LuminanceFrame[] = [];
    const words = new Set<string>();
    for (let at = 0; at < length; at += step) {
      time += step;
      relay.say.estimate(runEstimate(at / step, at, time - 40));
      if (at === 700 || at === 1500) {
        const checkpoint = at === 700 ? "arm-level-back" : "arm-level-down";
        const reading = readingAt(checkpoint, time, 0.3, sure("ball-to-toe"));
        relay.say.checkpoint(checkpointTold(repIds[0], reading));
      }
      if (at === 3200) relay.say.practice(practiceState({ revision: 2, paused: true }));
      if (at === 3900) relay.say.practice(practiceState({ revision: 3, paused: false }));
      if (at === 5200) relay.say.practice(practiceState({ revision: 4, verdict: demoVerdict }));
      // A round trip lets the message through before the page's clock moves.
      await page.evaluate(() => document.readyState);
      await page.clock.runFor(step);
      frames.push({ at, cells: await lookAt(page, eye) });
      words.add(
        (await page
          .locator("[data-part=key-word]")
          .getAttribute("data-lines")
          .catch(() => null)) ?? "",
      );
    }
    // The run was really seen: words came and went.
    expect(words.size).toBeGreaterThan(3);
    expect(countFlashes(frames)).toBeLessThanOrEqual(3);
  } finally {
    await eye.close();
    await page.close();
    await relay.close();
  }
});

/** The screen as 32 by 20 cells of relative luminance. */
async function lookAt(page: Page, eye: Page): Promise<readonly number[]> {
  const png = (await page.screenshot()).toString("base64");
  return await eye.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const picture = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const canvas = new OffscreenCanvas(32, 20);
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no canvas");
    context.imageSmoothingQuality = "high";
    context.drawImage(picture, 0, 0, 32, 20);
    const { data } = context.getImageData(0, 0, 32, 20);
    const linear = (at: number): number => {
      const share = (data[at] ?? 0) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    return Array.from(
      { length: 640 },
      (_, cell) => 0.2126 * linear(4 * cell) + 0.7152 * linear(4 * cell + 1) + 0.0722 * linear(4 * cell + 2),
    );
  }, png);
}
