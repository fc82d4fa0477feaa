import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { notCountedWords } from "@overcue/client-display/words/reasons";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { liveEstimate, practiceState, sure } from "../../fakes/practice-scenes.ts";
import { startScriptedRelay, type ScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { builtPages } from "./pages-folder.ts";
import { setStage, views } from "./views.ts";

let browser: Browser;
let relay: ScriptedRelay;
let page: Page;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});
beforeEach(async () => {
  relay = await startScriptedRelay({ pages: builtPages() });
  page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const [first] = views;
  if (first === undefined) throw new Error("no views");
  setStage(relay, first);
});
afterEach(async () => {
  await page.close();
  await relay.close();
});

test("D13 an address without a code says so and connects nowhere", async () => {
  await page.goto(`${relay.origin}/ground/`);
  await page.waitForSelector("[data-screen=unpaired]");
  expect(relay.hellos).toEqual([]);
});

test("D13 a wrong code is refused in the relay's words", async () => {
  await page.goto(`${relay.origin}/ground/#pair=not-the-secret-of-this-run-0000`);
  await page.waitForSelector("[data-screen=refused]");
  expect(await page.textContent("main")).toContain("scan it again");
});

test("D13 the page says hello as a display of this protocol, and the coach's as a coach", async () => {
  await page.goto(relay.address("ground"));
  await page.waitForSelector("[data-screen=pairing]");
  await page.goto(relay.address("coach"));
  await page.waitForSelector("[data-screen=coach]");
  // A page is drawn before its hello has come to the relay, or after.
  await expect
    .poll(() => relay.hellos.map(({ role, protocol }) => [role, protocol]))
    .toEqual([
      ["display", protocolVersion],
      ["coach", protocolVersion],
    ]);
});

test("D13 a lost relay is said, and the page comes back by itself with everything as it is by then", async () => {
  await page.goto(relay.address("coach"));
  await page.waitForSelector("[data-screen=coach] h1:has-text('Upright back')");
  relay.refuseConnections(true);
  relay.dropAll();
  await page.waitForSelector("text=The relay does not answer");
  relay.say.practice(practiceState({ drill: { ...practiceState().drill, name: "Quiet takeaway" } }));
  relay.refuseConnections(false);
  await page.waitForSelector("[data-screen=coach] h1:has-text('Quiet takeaway')");
  expect(await page.locator("text=The relay does not answer").count()).toBe(0);
});

test("D13 a swing that is not counted is said, with why and what to do, and a movement that nobody takes for one is not", async () => {
  await page.goto(relay.address("coach"));
  await page.waitForSelector("[data-screen=coach] h1:has-text('Upright back')");
  relay.say.noRep({ repId: crypto.randomUUID(), why: "too-long" });
  await page.waitForSelector(".notice");
  relay.say.noRep({ repId: crypto.randomUUID(), why: null });
  // Messages keep their order: the one that says nothing has come when the next one has.
  relay.say.practice(practiceState({ drill: { ...practiceState().drill, name: "Quiet takeaway" } }));
  await page.waitForSelector("[data-screen=coach] h1:has-text('Quiet takeaway')");
  expect(await page.locator(".notice").allTextContents()).toEqual([notCountedWords["too-long"]]);
});

test("D13 messages that break their schema are counted and left out; the next good one is shown", async () => {
  await page.addInitScript(() => {
    localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true }));
  });
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  await page.goto(relay.address("ground"));
  await page.click("[data-main]");
  await page.waitForSelector("[data-screen=practice]");
  relay.say.raw("estimate", { sequence: "one" });
  relay.say.raw("practice", null);
  relay.say.raw("rep", { id: "no uuid" });
  await page.waitForSelector("text=3 messages from the relay could not be read");
  let sequence = 0;
  const timer = setInterval(() => {
    sequence++;
    relay.say.estimate(liveEstimate(sequence, Date.now(), { x: 0, y: 0.6, band: sure("toe-line") }));
  }, 50);
  await page.waitForSelector('[data-part=key-word][data-band="toe-line"]');
  clearInterval(timer);
  expect(sequence).toBeGreaterThan(0);
});
