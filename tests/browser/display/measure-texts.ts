import type { Page } from "playwright-core";

export interface MeasuredText {
  readonly selector: string;
  readonly text: string;
  /** Font size in CSS pixels, or a mark's height. */
  readonly size: number;
  /** Wholly inside the window and inside its own box: nothing is cut off. What is scrolled to may stand below the window. */
  readonly whole: boolean;
  /** Where its box begins and ends, CSS pixels from the window's top. */
  readonly top: number;
  readonly bottom: number;
}

/** The computed sizes of what stands on the page, by selector; elements without text and not marks are left out. */
export async function measureTexts(page: Page, selectors: readonly string[]): Promise<readonly MeasuredText[]> {
  return await page.evaluate(
    (wanted) =>
      wanted.flatMap((selector) =>
        [...document.querySelectorAll(selector)].flatMap((element) => {
          const text = element.textContent.trim();
          const isMark = element instanceof SVGElement;
          if (text === "" && !isMark) return [];
          const box = element.getBoundingClientRect();
          const scrolls = element.closest("[data-sheets], [data-screen=menu]") !== null;
          const insideWindow =
            box.left >= -0.5 &&
            box.right <= innerWidth + 0.5 &&
            (scrolls || (box.top >= -0.5 && box.bottom <= innerHeight + 0.5));
          return [
            {
              selector,
              text,
              size: isMark ? box.height : parseFloat(getComputedStyle(element).fontSize),
              top: box.top,
              bottom: box.bottom,
              whole: insideWindow && element.scrollWidth <= element.clientWidth + 1,
            },
          ];
        }),
      ),
    [...selectors],
  );
}
