import type { Browser } from "playwright-core";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { builtPages } from "../display/pages-folder.ts";
import { openView, views } from "../display/views.ts";
import { laptopSize, phoneSize, takePicture } from "./take-picture.ts";

/** For a laptop at the golfer's feet. Metres. */
const distance = 3;

/** Every view of the ground screen on a laptop, and the coach's page on a phone, with a scripted relay's invented numbers. */
export async function takeViews(browser: Browser, folder: string): Promise<void> {
  for (const view of views) {
    const relay = await startScriptedRelay({ pages: builtPages() });
    const page = await browser.newPage({ viewport: view.page === "coach" ? phoneSize : laptopSize });
    await openView(page, relay, view, distance);
    const name = view.page === "coach" ? view.name : `ground-${view.name}`;
    await takePicture(page, folder, name, view.page === "coach");
    if (view.name === "session") {
      await page.keyboard.press("ArrowDown");
      await takePicture(page, folder, `${name}-plot`);
    }
    await page.close();
    await relay.close();
  }
}
