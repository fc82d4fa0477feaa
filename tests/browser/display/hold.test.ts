import { expect, test } from "vitest";
import { liveEstimate, sure } from "../../fakes/practice-scenes.ts";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { openPractice } from "./open-practice.ts";
import { builtPages } from "./pages-folder.ts";

test("D6 a club that is held to be looked at is told against the aim of its own checkpoint, and against the next one's when it has moved on", async () => {
  const browser = await launchChromium();
  const relay = await startScriptedRelay({ pages: builtPages() });
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
    await openPractice(page, relay);
    let sequence = 0;
    const momentWhile = async (phase: "back" | "hold", expected: string): Promise<void> => {
      const say = (): void => {
        const moment = { x: -0.1, y: 0.01, band: sure("ball-line"), checkpoint: "arm-level-back", phase } as const;
        relay.say.estimate(liveEstimate(++sequence, Date.now() - 30, moment));
      };
      const saying = setInterval(say, 50);
      try {
        await expect.poll(() => page.textContent('[data-part="moment"]'), { timeout: 20_000 }).toBe(expected);
      } finally {
        clearInterval(saying);
      }
    };
    await momentWhile("back", "arm level down");
    await momentWhile("hold", "arm level back");
    await momentWhile("back", "arm level down");
  } finally {
    await browser.close();
    await relay.close();
  }
});
