import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { practiceState, repIds } from "../../fakes/practice-scenes.ts";
import { startScriptedRelay, type ScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { builtPages } from "./pages-folder.ts";
import { demoVerdict, setStage, views } from "./views.ts";

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
});
afterEach(async () => {
  await page.close();
  await relay.close();
});

const [pairing] = views;
if (pairing === undefined) throw new Error("no views");
const at = (screen: string) => page.waitForSelector(`[data-screen=${screen}]`);
const press = async (...keys: readonly string[]) => {
  for (const key of keys) await page.keyboard.press(key);
};
const asked = async (count: number) => {
  await expect.poll(() => relay.commands.length, { timeout: 10_000 }).toBe(count);
  return relay.commands.at(-1);
};

test("D10 a whole session by keyboard alone, from the pairing code to the session view", async () => {
  setStage(relay, pairing);
  await page.goto(relay.address("ground"));
  await at("pairing");
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  await at("cautions");
  await press("Enter");
  await at("set-up");
  await press("Shift+Tab", "Shift+Tab", "Shift+Tab", "Space");
  await page.waitForSelector("[data-main]:focus, .set-up input:focus");
  await page.focus("[data-main]");
  await press("Enter");
  await at("practice");

  relay.say.practice(
    practiceState({ revision: 2, feltAnswerWanted: repIds[0], feltAnswerCheckpoint: "arm-level-back" }),
  );
  await at("felt-question");
  await press("3");
  expect(await asked(1)).toEqual({
    do: "answer-felt",
    repId: repIds[0],
    checkpoint: "arm-level-back",
    band: "ball-to-toe",
  });
  relay.say.practice(practiceState({ revision: 3, verdict: demoVerdict }));
  await at("verdict");
  expect(await page.textContent(".verdict-sentence")).toContain("Back: ball to toes.");

  await press("v");
  expect(await asked(2)).toEqual({ do: "void-rep", repId: null });
  await press("n");
  expect(await asked(3)).toEqual({ do: "next-stage" });
  await press("m");
  expect(await asked(4)).toEqual({ do: "mute", muted: false });
  await press("p");
  expect(await asked(5)).toEqual({ do: "pause", paused: true });

  await press("Escape");
  await at("menu");
  await press("ArrowDown", "Enter");
  expect(await asked(6)).toEqual({ do: "void-rep", repId: null });

  await press(",");
  await at("settings");
  await page.focus("input[name=theme]:checked");
  await press("ArrowRight");
  await expect.poll(() => page.getAttribute("html", "data-theme")).toBe("dim");
  await press("Escape");

  await press("s");
  expect(await asked(7)).toEqual({ do: "view", view: "session" });
  relay.say.practice(practiceState({ revision: 4, view: "session" }));
  await at("session");
  await press("Escape");
  expect(await asked(8)).toEqual({ do: "view", view: "live" });
});

test("D10 a presenter's two keys set up, void a rep and answer what it felt like", async () => {
  setStage(relay, pairing);
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  await page.goto(relay.address("ground"));
  await at("cautions");
  await press("PageDown");
  await at("set-up");
  await press("PageDown");
  await at("practice");
  await press("PageDown");
  await at("menu");
  await press("PageDown", "PageUp");
  expect(await asked(1)).toEqual({ do: "void-rep", repId: null });
  await at("practice");
  relay.say.practice(
    practiceState({ revision: 2, feltAnswerWanted: repIds[0], feltAnswerCheckpoint: "arm-level-down" }),
  );
  await at("felt-question");
  await press("PageDown", "PageDown", "PageUp");
  expect(await asked(2)).toMatchObject({ do: "answer-felt", band: "ball-to-toe" });
  await press("b");
  expect(await asked(3)).toEqual({ do: "pause", paused: true });
});

test("D10 one button is enough: the highlight moves by itself and the button chooses", async () => {
  setStage(relay, pairing);
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  relay.say.practice(practiceState({ feltAnswerWanted: repIds[0], feltAnswerCheckpoint: "arm-level-down" }));
  await page.addInitScript(() => {
    localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true, oneButton: true }));
  });
  await page.goto(relay.address("ground"));
  await at("set-up");
  await press("PageDown");
  await at("felt-question");
  await page.waitForSelector('[data-choice="ball-line"]:focus');
  await press("PageDown");
  expect(await asked(1)).toMatchObject({ do: "answer-felt" });
});

test("D10 a refusal is shown in the relay's own words", async () => {
  setStage(relay, pairing);
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  relay.refuseWith("No rep to void yet.");
  await page.addInitScript(() => {
    localStorage.setItem("overcue-screen", JSON.stringify({ cautionsRead: true }));
  });
  await page.goto(relay.address("ground"));
  await at("set-up");
  await press("PageDown");
  await at("practice");
  await press("v");
  await page.waitForSelector("text=No rep to void yet.");
  expect(relay.commands).toEqual([{ do: "void-rep", repId: null }]);
});
