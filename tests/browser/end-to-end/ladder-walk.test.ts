import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import type { Browser, Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { placesOf } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { wireRep } from "@overcue/client-capture/link/wire-rep";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { machineEffects } from "@overcue/server/machine-effects";
import { stageIds, type PracticeState } from "@overcue/shared-geometry/wire/practice";
import { demoPupilRep } from "../../fakes/demo-pupil-rep.ts";
import { captureState } from "../../fakes/practice-scenes.ts";
import { heardOf, joinRelay, settle, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";
import { watchCue } from "./watch-cue.ts";

let relay: RunningRelay;
let browser: Browser;
let book: ReturnType<typeof openPracticeBook>;
let folder: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-ladder-"));
  book = openPracticeBook(join(folder, "practice.book"), { now: () => machineEffects.relayTime(), newId: randomUUID });
  relay = await startRelay(machineEffects, book);
});
afterEach(async () => {
  await browser.close();
  await relay.close();
  book.close();
  await rm(folder, { recursive: true, force: true });
});

/** The practice as the relay last told a page. */
function practiceOf(page: Joined): PracticeState {
  const told = heardOf(page, "practice").at(-1) as PracticeState | undefined;
  if (told === undefined) throw new Error("the relay has told no practice yet");
  return told;
}

/** The stage that the screen names with an answer, once that answer is up. */
async function stageNamed(page: Page, sentence: string): Promise<string> {
  const verdict = page.locator("[data-screen=verdict]").filter({ hasText: sentence });
  const count = (await verdict.locator(".rep-count").textContent()) ?? "";
  return /· ([a-z ]+) \d+$/.exec(count)?.[1] ?? count;
}

/** What the ground screen was told last, once that is what the coach was told. */
async function sameOnScreen(cueOnScreen: () => PracticeState | null, coach: Joined): Promise<PracticeState | null> {
  const differs = "the ground screen was told another practice than the coach";
  await vi.waitFor(
    () => {
      if (!isDeepStrictEqual(cueOnScreen(), practiceOf(coach))) throw new Error(differs);
    },
    { timeout: 20_000 },
  );
  return cueOnScreen();
}

/** Half of what is felt arrives in this golfer's swing: half as flat back and steep down again as the demonstration's. */
const pupil = { habit: placesOf(1.5), carryOver: 0.5 };
const mostReps = 250;

describe("the ladder, in a browser", () => {
  it("P33 the demo golfer follows the cue on the ground screen from the baseline to the ball, each swing measured by the stages after the tracker", async () => {
    const { secret } = relay.application;
    const coach = await joinRelay(relay.origin, "coach", { secret, name: "Robin" });
    const phone = await joinRelay(relay.origin, "capture", { secret });
    phone.socket.emit("captureState", captureState({ source: "clip" }));
    browser = await launchChromium();
    const page = await (await browser.newContext({ ignoreHTTPSErrors: true })).newPage();
    const cueOnScreen = watchCue(page);
    await page.goto(relay.page("display"));
    await page.waitForSelector("[data-screen=practice]");

    const named: string[] = [];
    const isThrough = (): boolean => book.sessionView().blocks.some((block) => block.stage === "ball" && block.passed);
    let found = 0;
    for (let made = 0; made < mostReps && !isThrough(); made++) {
      if (practiceOf(coach).proposals.length > 0) await coach.socket.emitWithAck("practice", { do: "accept-proposal" });
      await settle(coach.socket);
      const reading = demoPupilRep(pupil, found > 0 ? await sameOnScreen(cueOnScreen, coach) : null, made);
      if (reading === null) continue;
      found++;
      const id = randomUUID();
      const offset = machineEffects.relayTime() - reading.endedAt;
      const told = wireRep(reading, id, "right", "station", (t) => t + offset);
      expect(await phone.socket.emitWithAck("rep", told)).toEqual({ ok: true });
      await settle(coach.socket);
      const { verdict } = practiceOf(coach);
      if (verdict?.repId !== id) continue;
      const stage = await stageNamed(page, verdict.sentence);
      if (named.at(-1) !== stage) named.push(stage);
    }
    coach.socket.close();
    phone.socket.close();
    expect(isThrough()).toBe(true);
    expect(named.filter((stage, index) => named.indexOf(stage) === index)).toEqual(
      stageIds.map((stage) => stage.replace("-", " ")),
    );
  }, 900_000);
});
