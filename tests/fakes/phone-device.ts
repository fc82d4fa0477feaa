import type { Page } from "playwright-core";

/** What a page does with the parts of a phone that this machine has not: they are put in its place before its first script. */
interface Watched {
  overcueWakeLocks: { asked: number; let: number };
}

/** A screen lock that is always given; counts how often it was asked for and let go. */
export async function fakeWakeLock(page: Page): Promise<() => Promise<{ asked: number; let: number }>> {
  await page.addInitScript(() => {
    const count = { asked: 0, let: 0 };
    Object.assign(window, { overcueWakeLocks: count });
    Object.defineProperty(navigator, "wakeLock", {
      value: {
        request: () => {
          count.asked++;
          return Promise.resolve({
            release: () => {
              count.let++;
              return Promise.resolve();
            },
          });
        },
      },
    });
  });
  return async () => await page.evaluate(() => (window as unknown as Watched).overcueWakeLocks);
}

/** A battery that is not charging, at that level (0 to 1). */
export async function fakeBattery(page: Page, level: number): Promise<void> {
  await page.addInitScript((share) => {
    const battery = Object.assign(new EventTarget(), { level: share, charging: false });
    Object.defineProperty(navigator, "getBattery", { value: () => Promise.resolve(battery) });
  }, level);
}
