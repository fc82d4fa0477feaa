import { join } from "node:path";
import type { Page } from "playwright-core";

export const phoneSize = { width: 390, height: 844 };
export const laptopSize = { width: 1280, height: 800 };

/** The page as a PNG in the folder, once its typeface is there; says so. */
export async function takePicture(page: Page, folder: string, name: string, fullPage = false): Promise<void> {
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: join(folder, `${name}.png`), fullPage });
  process.stdout.write(`${name}.png\n`);
}
