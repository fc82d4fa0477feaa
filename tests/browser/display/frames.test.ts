import type { Browser } from "playwright-core";
import { afterAll, beforeAll, expect, test } from "vitest";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { openPractice } from "./open-practice.ts";
import { builtPages } from "./pages-folder.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

test("D16 React commits nothing while estimates come, and does where the practice changes", async () => {
  const relay = await startScriptedRelay({ pages: builtPages() });
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  try {
    const practice = await openPractice(page, relay);
    const before = await practice.commits();
    // Within one aim: the checkpoint last passed does not change.
    await practice.sayEstimates(120, 16, () => 0);
    expect(await practice.drawn()).toBeGreaterThan(20);
    expect(await practice.commits()).toBe(before);
    practice.pause();
    await expect.poll(() => practice.commits()).toBeGreaterThan(before);
  } finally {
    await page.close();
    await relay.close();
  }
});
