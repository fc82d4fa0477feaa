import { mkdir } from "node:fs/promises";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { builtPages } from "../display/pages-folder.ts";
import { openView, viewports, views } from "../display/views.ts";

/** `npx node tests/browser/screens/look.run.ts --to DIR [--view NAME]`: every view at every size that it must hold, to be looked at. */
const { values } = parseArgs({ options: { to: { type: "string" }, view: { type: "string" } } });
const { to, view: only } = values;
if (to === undefined) throw new Error("Say where the pictures go: --to DIR");
await mkdir(to, { recursive: true });

const browser = await launchChromium();
try {
  for (const { width, height, distance } of viewports) {
    for (const view of views.filter(({ name }) => only === undefined || name.startsWith(only))) {
      const relay = await startScriptedRelay({ pages: builtPages() });
      const page = await browser.newPage({ viewport: { width, height } });
      await openView(page, relay, view, distance);
      await page.screenshot({ path: join(to, `${view.name}-${width}x${height}.png`), fullPage: view.page === "coach" });
      await page.close();
      await relay.close();
    }
  }
} finally {
  await browser.close();
}
