import { AxeBuilder } from "@axe-core/playwright";
import type { Browser, Page } from "playwright-core";
import { metres, pixels } from "@overcue/shared-geometry/units";
import { angleOfHeight, assumedPixelsPerMillimetre, capitalShare } from "@overcue/client-display/sizes/viewing-sizes";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { measureTexts } from "./measure-texts.ts";
import { builtPages } from "./pages-folder.ts";
import { openView, viewports, views, type View } from "./views.ts";

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

/** Sizes that are read from as far away show the same page, made larger: it is opened once. */
const openings = [...Map.groupBy(viewports, ({ distance }) => distance)].map(([distance, sizes]) => ({
  distance,
  sizes: sizes.map(({ width, height }) => ({ width, height })),
  at: sizes.map(({ width, height }) => `${width} x ${height}`).join(" and "),
}));

describe.each(openings)("at $at", ({ distance, sizes }) => {
  test.each(views)(
    "D4 D5 $name: axe is content, words are large enough and whole, nothing sticks out",
    async (view) => {
      const relay = await startScriptedRelay({ pages: builtPages() });
      const context = await browser.newContext({ viewport: sizes[0] ?? null, reducedMotion: "reduce" });
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
      });
      page.on("pageerror", (error) => complaints.push(error.message));
      try {
        await openView(page, relay, view, distance);
        for (const size of sizes) {
          await resizeTo(page, size);
          await expectReadable(page, view, distance, `${view.name} at ${size.width} x ${size.height}`);
        }
        expect(complaints).toEqual([]);
      } finally {
        await context.close();
        await relay.close();
      }
    },
  );
});

/** Waits until the page is drawn at the size. */
async function resizeTo(page: Page, size: { readonly width: number; readonly height: number }): Promise<void> {
  await page.setViewportSize(size);
  await page.waitForFunction(({ width, height }) => innerWidth === width && innerHeight === height, size);
  await page.evaluate(
    () =>
      new Promise((drawn) => {
        requestAnimationFrame(() => requestAnimationFrame(drawn));
      }),
  );
}

async function expectReadable(page: Page, view: View, distance: number, where: string): Promise<void> {
  const viewing = { distance: metres(distance), pixelsPerMillimetre: assumedPixelsPerMillimetre };
  const tooSmall = async (selectors: readonly string[], share: number, arcMinutes: number) =>
    (await measureTexts(page, selectors)).filter(
      ({ size }) => angleOfHeight(pixels(size * share), viewing) < arcMinutes - 0.05,
    );
  // The pages have no frames, so the mode that opens a second page for them is not needed.
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  const told = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);
  expect(told, where).toEqual([]);
  expect(await tooSmall(keyWords, capitalShare, 40), where).toEqual([]);
  expect(await tooSmall(mustRead, capitalShare, 20), where).toEqual([]);
  expect(await tooSmall(marks, 1, 40), where).toEqual([]);
  const read = await measureTexts(page, [...keyWords, ...mustRead, ...marks]);
  expect(
    read.filter(({ whole }) => !whole),
    where,
  ).toEqual([]);
  const expected = present[view.name] ?? null;
  expect(expected === null || read.some(({ selector }) => selector === expected), where).toBe(true);
  const notices = await measureTexts(page, [".notice"]);
  const covered = read.filter(
    ({ selector, top }) => keyWords.includes(selector) && notices.some((notice) => top < notice.bottom),
  );
  expect(covered, where).toEqual([]);
  const wider = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wider, where).toBeLessThanOrEqual(0);
}
