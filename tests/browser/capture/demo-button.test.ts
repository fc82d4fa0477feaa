import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { bandAt } from "@overcue/shared-geometry/band-interval";
import { metres } from "@overcue/shared-geometry/units";
import { placesOf, usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";
import { watchGroundWords, type GroundWord } from "./ground-words.ts";

/**
 * The whole way in one browser: the demo golfer's pictures through the pose model and the measuring stages on the phone's page, the relay, the
 * ground screen. The show runs on its own time, as slowly as this machine needs.
 */
let relay: RunningRelay;
let browser: Browser;
let ground: Page;
let words: () => Promise<readonly GroundWord[]>;

beforeAll(async () => {
  relay = await startRelay();
  browser = await launchChromium();
  const context = await browser.newContext({ ignoreHTTPSErrors: true });
  ground = await context.newPage();
  await ground.goto(relay.page("display"));
  const phone = await context.newPage();
  await phone.goto(relay.page("capture"));
  await phone.getByRole("button", { name: /demo golfer/ }).click();
  await ground.locator("[data-screen=practice]").waitFor({ timeout: 120_000 });
  words = await watchGroundWords(ground);
});
afterAll(async () => {
  await browser.close();
  await relay.close();
});

/** The words about a checkpoint of the first `reps` of a kind, once one names a band. */
async function bandsAt(moment: string, from: number): Promise<readonly string[]> {
  for (;;) {
    const told = (await words()).slice(from).filter((word) => word.moment === moment && /pointed/.test(word.heading));
    if (told.some(({ band }) => band !== "")) return told.map(({ band }) => band).filter((band) => band !== "");
    await ground.waitForTimeout(500);
  }
}

const truthOf = (y: number): string => {
  const { toeLine, heelLine } = usualGolfer.station;
  return bandAt(metres(y), { toeLine, heelLine, tolerance: metres(0.05) });
};

test(
  "E1 a swing that is flat back and steep down is shown beyond the ball going back and between ball and toes coming down",
  { timeout: 900_000 },
  async () => {
    const { buttBack, buttDown } = placesOf(1);
    expect(new Set(await bandsAt("arm level back", 0))).toEqual(new Set([truthOf(buttBack)]));
    expect(new Set(await bandsAt("arm level down", 0))).toEqual(new Set([truthOf(buttDown)]));
  },
);
