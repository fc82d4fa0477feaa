import { randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { machineEffects } from "@overcue/server/machine-effects";
import { stageIds, type PracticeState } from "@overcue/shared-geometry/wire/practice";
import { flatToSteepGolfer, makeRep } from "../../fakes/golfer-model.ts";
import { captureState } from "../../fakes/practice-scenes.ts";
import { heardOf, joinRelay, settle, type Joined } from "../../relay/join-relay.ts";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { seededRandom } from "../../scenes/random.ts";
import { launchChromium } from "../chromium.ts";

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

describe("the ladder, in a browser", () => {
  it("P33 a golfer who follows the cue climbs from the baseline to the ball, and the ground screen names each stage on the way", async () => {
    const { secret } = relay.application;
    const coach = await joinRelay(relay.origin, "coach", { secret, name: "Robin" });
    const phone = await joinRelay(relay.origin, "capture", { secret });
    phone.socket.emit("captureState", captureState({ source: "clip" }));
    browser = await launchChromium();
    const page = await (await browser.newContext({ ignoreHTTPSErrors: true })).newPage();
    await page.goto(relay.page("display"));
    await page.waitForSelector("[data-screen=practice]");

    // The golfer's carry-over is half of what is felt; everything else is answered by the relay, the book and the screen.
    const golfer = { ...flatToSteepGolfer, carryOver: 0.5, scatter: 0.02, random: seededRandom(7) };
    const named: string[] = [];
    const isThrough = (): boolean => book.sessionView().blocks.some((block) => block.stage === "ball" && block.passed);
    for (let rep = 0; rep < 120 && !isThrough(); rep++) {
      await settle(coach.socket);
      if (practiceOf(coach).proposals.length > 0) await coach.socket.emitWithAck("practice", { do: "accept-proposal" });
      await settle(coach.socket);
      const made = makeRep(golfer, practiceOf(coach), machineEffects.relayTime(), randomUUID());
      expect(await phone.socket.emitWithAck("rep", made)).toEqual({ ok: true });
      const count = await page
        .locator("[data-screen=verdict] .rep-count")
        .textContent({ timeout: 500 })
        .catch(() => null);
      const stage = count === null ? null : (/· ([a-z ]+) \d+$/.exec(count)?.[1] ?? null);
      if (stage !== null && named.at(-1) !== stage) named.push(stage);
    }
    coach.socket.close();
    phone.socket.close();
    expect(isThrough()).toBe(true);
    expect(named.filter((stage, index) => named.indexOf(stage) === index)).toEqual(
      stageIds.map((stage) => stage.replace("-", " ")),
    );
  });
});
