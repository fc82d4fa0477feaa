import type { Paint } from "../ground-view/draw-list/shapes.ts";

export const themeIds = ["sun", "dim", "night"] as const;
export type ThemeId = (typeof themeIds)[number];

/**
 * The colours of each part by theme. Accents are Okabe and Ito's set, which keeps apart under the common kinds of
 * colour blindness; none of them stands alone: every one comes with a pattern, a shape or a word. In the sun theme ink
 * on every ground, and plots on paper, keep 7 to 1: for that some accents are lighter or darker than the set's.
 */
export const palettes: Readonly<Record<ThemeId, Readonly<Record<Paint, string>>>> = {
  sun: {
    paper: "#ffffff",
    strip: "#e4e4de",
    ink: "#000000",
    quiet: "#3d3d3d",
    felt: "#e69f00",
    wanted: "#56b4e9",
    live: "#d55e00",
    good: "#33b68d",
    off: "#d183ae",
    plotWarm: "#8f3f00",
    plotCool: "#005a8c",
  },
  dim: {
    paper: "#23272e",
    strip: "#343a44",
    ink: "#f6f3ea",
    quiet: "#c9c6bd",
    felt: "#8a5f00",
    wanted: "#0a5c8c",
    live: "#f0e442",
    good: "#007d5b",
    off: "#9c4f79",
    plotWarm: "#f0e442",
    plotCool: "#56b4e9",
  },
  night: {
    paper: "#000000",
    strip: "#17130e",
    ink: "#e0a458",
    quiet: "#b98646",
    felt: "#553b00",
    wanted: "#0b3f5c",
    live: "#d55e00",
    good: "#00664a",
    off: "#7d4a66",
    plotWarm: "#d55e00",
    plotCool: "#3f87ad",
  },
};
