import type { Page } from "playwright-core";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoShow } from "./demo-show.ts";

/** Begins a show on the demo golfer's test page; the virtual phone that it is drawn for. */
export async function openShow(page: Page, show: DemoShow): Promise<Camera> {
  const { camera } = await page.evaluate((wanted) => {
    if (!globalThis.demoPage) throw new Error("the page has not loaded");
    return globalThis.demoPage.open(wanted);
  }, show);
  return camera;
}

/** Has every picture of a show sent. */
export async function playShow(
  page: Page,
  show: DemoShow,
): Promise<{ readonly camera: Camera; readonly frames: number }> {
  const camera = await openShow(page, show);
  const frames = await page.evaluate(async () => {
    const shown = globalThis.demoPage;
    if (!shown) throw new Error("the page has not loaded");
    let count = 0;
    while (await shown.next()) {
      await shown.send();
      count++;
    }
    return count;
  });
  return { camera, frames };
}
