import { palettes, themeIds } from "@overcue/client-display/theme/palette";
import { describe, expect, test } from "vitest";

/** Relative luminance and contrast after WCAG 2.2. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

describe("D5 colours", () => {
  test("D5 the oracle knows black on white", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 6);
  });

  test.each(themeIds)("D5 %s: words keep their contrast on everything they stand on", (theme) => {
    const colours = palettes[theme];
    const least = theme === "sun" ? 7 : 4.5;
    const pairs = [
      ["ink", "paper"],
      ["ink", "strip"],
      ["ink", "felt"],
      ["ink", "wanted"],
      ["quiet", "paper"],
    ] as const;
    const tooWeak = pairs.filter(([word, ground]) => contrast(colours[word], colours[ground]) < least);
    expect(tooWeak).toEqual([]);
  });

  test.each(themeIds)("D5 %s: marks and plot lines keep 3 to 1 on paper (WCAG 2.2, 1.4.11)", (theme) => {
    const colours = palettes[theme];
    const tooWeak = (["live", "wantedLine"] as const).filter((part) => contrast(colours[part], colours.paper) < 3);
    expect(tooWeak).toEqual([]);
  });
});
