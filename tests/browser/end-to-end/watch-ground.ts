import type { Page } from "playwright-core";

/** One thing that the ground screen said for a while: the big word and the checkpoint it was about, or the answer after a rep. */
export interface Said {
  readonly moment: string;
  /** What the word is about, now or when the checkpoint was passed. */
  readonly heading: string;
  readonly kind: string;
  readonly band: string;
  readonly calibration: string;
  /** The answer's text while it is up; empty otherwise. */
  readonly answer: string;
}

interface Watched {
  overcueSaid: Said[];
}

/** Notes every change of the big word on the practice view from now on. */
export async function watchGround(page: Page): Promise<() => Promise<readonly Said[]>> {
  await page.waitForSelector("[data-screen=practice]", { timeout: 120_000 });
  await page.evaluate(() => {
    const said: Said[] = [];
    Object.assign(window, { overcueSaid: said });
    const text = (part: string): string => document.querySelector(`[data-part="${part}"]`)?.textContent ?? "";
    const note = (): void => {
      const word = document.querySelector<HTMLElement>("[data-part=key-word]");
      const now: Said = {
        moment: text("moment"),
        heading: text("heading"),
        kind: word?.dataset["kind"] ?? "",
        band: word?.dataset["band"] ?? "",
        calibration: text("calibration"),
        answer: document.querySelector("[data-screen=verdict]")?.textContent ?? "",
      };
      const last = said.at(-1);
      const parts = ["moment", "heading", "kind", "band"] as const;
      if (last === undefined || parts.some((part) => last[part] !== now[part])) said.push(now);
    };
    new MutationObserver(note).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
      attributeFilter: ["data-kind", "data-band"],
    });
  });
  return async () => await page.evaluate(() => (window as unknown as Watched).overcueSaid);
}
