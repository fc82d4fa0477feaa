import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { launchChromium } from "../chromium.ts";
import { takePhone } from "./take-phone.ts";
import { takeViews } from "./take-views.ts";

/**
 * `npm run docs:screens`: the pictures of README, taken of the real pages. The ground screen and the coach's page show
 * invented numbers (`--only views`), the phone the demo golfer as it measures him (`--only phone`).
 */
const { values } = parseArgs({ options: { only: { type: "string" } } });
const out = join(import.meta.dirname, "../../../docs");
await mkdir(out, { recursive: true });

const browser = await launchChromium();
try {
  if (values.only !== "phone") await takeViews(browser, out);
  if (values.only !== "views") await takePhone(browser, out);
} finally {
  await browser.close();
}
