import type { Page } from "playwright-core";

/** What the ground screen's big word said of a moment: a band, or empty where it named none or two. */
export interface GroundWord {
  readonly moment: string;
  readonly heading: string;
  readonly band: string;
  readonly words: string;
}

/** Writes down every word that the practice view shows from now on. */
export async function watchGroundWords(page: Page): Promise<() => Promise<readonly GroundWord[]>> {
  await page.evaluate(() => {
    const seen: GroundWord[] = [];
    (globalThis as unknown as { groundWords: GroundWord[] }).groundWords = seen;
    const text = (part: string): string => document.querySelector(`[data-part="${part}"]`)?.textContent ?? "";
    const look = (): void => {
      const word = document.querySelector<HTMLElement>('[data-part="key-word"]');
      const now = {
        moment: text("moment"),
        heading: text("heading"),
        band: word?.dataset["band"] ?? "",
        words: (word?.dataset["lines"] ?? "").replaceAll("|", " "),
      };
      const last = seen.at(-1);
      if (JSON.stringify(last) !== JSON.stringify(now)) seen.push(now);
      requestAnimationFrame(look);
    };
    look();
  });
  return () => page.evaluate(() => (globalThis as unknown as { groundWords: GroundWord[] }).groundWords);
}
