import { randomUUID } from "node:crypto";
import { mkdir, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { machineEffects } from "@overcue/server/machine-effects";
import { heardOf, joinRelay } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";

/** `npm run docs:screens`: the pictures of README, taken of the real pages while the demo golfer rehearses. */
const out = join(import.meta.dirname, "../../../docs");
const phoneSize = { width: 390, height: 844 };
const laptop = { width: 1280, height: 800 };

async function open(browser: Browser, size: { width: number; height: number }): Promise<BrowserContext> {
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: size });
  await context.addInitScript(() => {
    localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true }));
  });
  return context;
}

async function take(page: Page, name: string): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(out, `${name}.png`) });
  process.stdout.write(`docs/${name}.png\n`);
}

/** Waits for the practice view to say for sure which band the butt points at, lead arm level. */
async function saysABand(ground: Page): Promise<void> {
  await ground.waitForFunction(
    () =>
      document.querySelector<HTMLElement>("[data-part=key-word]")?.dataset["kind"] === "sure" &&
      (document.querySelector("[data-part=moment]")?.textContent ?? "").startsWith("arm level"),
    undefined,
    { timeout: 240_000, polling: 50 },
  );
}

async function takeAll(browser: Browser, relay: RunningRelay): Promise<void> {
  const coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret, name: "Robin (invented)" });
  await coach.socket.emitWithAck("practice", { do: "start-practice" });

  const trust = await (await open(browser, phoneSize)).newPage();
  await trust.goto(`http://127.0.0.1:${relay.application.httpPort}/`);
  await take(trust, "trust");

  const ground = await (await open(browser, laptop)).newPage();
  await ground.goto(relay.page("display"));
  await ground.waitForSelector("[data-screen=pairing]");
  await take(ground, "ground-pairing");

  const phone = await (await open(browser, phoneSize)).newPage();
  await phone.goto(relay.page("capture"));
  await take(phone, "phone-choose");
  await phone.getByRole("button", { name: "Nobody here: demo golfer" }).click();
  await ground.waitForSelector("[data-screen=practice]", { timeout: 120_000 });
  await saysABand(ground);
  await take(ground, "ground-practice");
  await take(phone, "phone-demo");

  const handheld = await (await open(browser, phoneSize)).newPage();
  await handheld.goto(relay.page("coach"));
  const until = Date.now() + 240_000;
  while (heardOf(coach, "rep").length < 2 && Date.now() < until) await new Promise((go) => setTimeout(go, 200));
  await take(ground, "ground-verdict");
  await take(handheld, "coach");
  coach.socket.close();
}

await mkdir(out, { recursive: true });
const folder = await mkdtemp(join(tmpdir(), "overcue-screens-"));
const book = openPracticeBook(join(folder, "practice.book"), {
  now: () => machineEffects.relayTime(),
  newId: randomUUID,
});
const relay = await startRelay(machineEffects, book);
const browser = await launchChromium();
try {
  await takeAll(browser, relay);
} finally {
  await browser.close();
  await relay.close();
  book.close();
  await rm(folder, { recursive: true, force: true });
}
