import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { metres, pixels } from "@overcue/shared-geometry/units";
import { angleOfHeight, assumedPixelsPerMillimetre, capitalShare } from "@overcue/client-display/sizes/viewing-sizes";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { measureTexts } from "./measure-texts.ts";
import { builtPages } from "./pages-folder.ts";
import { openView, viewports, views } from "./views.ts";

let browser: Browser;
beforeAll(async () => {
  browser = await launchChromium();
});
afterAll(async () => {
  await browser.close();
});

/** What is read from where the golfer stands, by the arc minutes that it must subtend. */
const keyWords = ['[data-part="key-word"][data-kind="sure"] span'];
const mustRead = [
  '[data-part="moment"]',
  '[data-part="heading"]',
  '[data-part="calibration"]',
  '[data-part="key-word"]:not([data-kind="sure"]) span',
  '[data-part="next"]',
  ".verdict-sentence span",
  ".strip li > span:not(.unseen)",
  ".rep-count",
  ".notice",
  '[data-screen="menu"] .choice-list button',
  ".session h1",
  ".session h2",
  ".session p",
  ".session .stage-runs li",
  ".session figcaption",
  ".session .plot-key li",
  ".felt-question h1",
  ".felt-question button",
];
const marks = [".strip-mark"];
/** The one of them in each view without which the check would have looked at nothing. */
const present: Readonly<Record<string, string>> = {
  "set-up": '[data-part="next"]',
  practice: keyWords[0] ?? "",
  session: ".session .plot-key li",
  "changed-by-another": ".notice",
  menu: '[data-screen="menu"] .choice-list button',
  "practice-baseline": '[data-part="key-word"]:not([data-kind="sure"]) span',
  "practice-unsure": '[data-part="calibration"]',
  "practice-beside": keyWords[0] ?? "",
  verdict: ".strip-mark",
  "felt-question": ".felt-question button",
};

describe.each(viewports)("at $width x $height", ({ width, height, distance }) => {
  const viewing = { distance: metres(distance), pixelsPerMillimetre: assumedPixelsPerMillimetre };
  const tooSmall = async (page: Page, selectors: readonly string[], share: number, arcMinutes: number) =>
    (await measureTexts(page, selectors)).filter(
      ({ size }) => angleOfHeight(pixels(size * share), viewing) < arcMinutes - 0.05,
    );

  test.each(views)(
    "D4 D5 $name: axe is content, words are large enough and whole, nothing sticks out",
    async (view) => {
      const relay = await startScriptedRelay({ pages: builtPages() });
      const context = await browser.newContext({ viewport: { width, height }, reducedMotion: "reduce" });
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
      });
      page.on("pageerror", (error) => complaints.push(error.message));
      try {
        await openView(page, relay, view, distance);
        // The pages have no frames, so the mode that opens a second page for them is not needed.
        const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
        expect(await tooSmall(page, keyWords, capitalShare, 40)).toEqual([]);
        expect(await tooSmall(page, mustRead, capitalShare, 20)).toEqual([]);
        expect(await tooSmall(page, marks, 1, 40)).toEqual([]);
        const read = await measureTexts(page, [...keyWords, ...mustRead, ...marks]);
        expect(read.filter(({ whole }) => !whole)).toEqual([]);
        const expected = present[view.name] ?? null;
        expect(expected === null || read.some(({ selector }) => selector === expected)).toBe(true);
        const notices = await measureTexts(page, [".notice"]);
        const covered = read.filter(
          ({ selector, top }) => keyWords.includes(selector) && notices.some((notice) => top < notice.bottom),
        );
        expect(covered).toEqual([]);
        const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect(wider).toBeLessThanOrEqual(0);
        expect(complaints).toEqual([]);
      } finally {
        await context.close();
        await relay.close();
      }
    },
  );
});
