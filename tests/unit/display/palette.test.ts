import { drawAimBands, drawAimTags } from "@overcue/client-display/ground-view/draw-list/draw-aim";
import { drawStation, drawStrips } from "@overcue/client-display/ground-view/draw-list/draw-ground";
import { drawHistory } from "@overcue/client-display/ground-view/draw-list/draw-history";
import { drawLive } from "@overcue/client-display/ground-view/draw-list/draw-live";
import { drawMarks } from "@overcue/client-display/ground-view/draw-list/draw-marks";
import { groundFrame } from "@overcue/client-display/ground-view/draw-list/ground-frame";
import type { DrawList, Paint, Shape } from "@overcue/client-display/ground-view/draw-list/shapes";
import { palettes, themeIds } from "@overcue/client-display/theme/palette";
import { describe, expect, test } from "vitest";
import { demoAims, sceneLayout } from "../../fakes/practice-scenes.ts";

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

  test.each(themeIds)("D5 %s: plots' lines, and ticks on the strip's marks, keep it too", (theme) => {
    const colours = palettes[theme];
    const least = theme === "sun" ? 7 : 4.5;
    for (const part of ["plotWarm", "plotCool", "quiet", "ink"] as const) {
      expect(contrast(colours[part], colours.paper)).toBeGreaterThanOrEqual(least);
    }
    // A mark's ink stands on its own colour: more than 3 to 1 (WCAG 2.2, 1.4.11) in any light, 7 in the sun.
    for (const ground of ["good", "off", "paper"] as const) {
      expect(contrast(colours.ink, colours[ground])).toBeGreaterThanOrEqual(theme === "sun" ? 7 : 3);
    }
  });

  test("D5 in the sun every line, edge and word that the ground is drawn with keeps 7 to 1 on whatever lies under it", () => {
    const colours = palettes.sun;
    const grounds = ["paper", "strip", "felt", "wanted"] as const;
    const drawn = everythingDrawn();
    expect(new Set(drawn.map(({ kind }) => kind))).toEqual(
      new Set(["rect", "pattern", "frame", "line", "outline", "ellipse", "mark", "tag"]),
    );
    const weak = drawn.flatMap((shape) => {
      const edge = edgeOf(shape);
      if (edge === null) return [];
      const under = shape.kind === "tag" ? [shape.ground] : grounds;
      return under.filter((ground) => contrast(over(colours[edge], colours[ground], shape.alpha), colours[ground]) < 7);
    });
    expect(weak).toEqual([]);
  });

  test("D5 the oracle of colour blindness leaves greys alone", () => {
    for (const matrix of Object.values(colourBlind)) {
      for (const row of matrix) expect(row.reduce((sum, part) => sum + part, 0)).toBeCloseTo(1, 3);
    }
  });

  test.each(themeIds)(
    "D5 %s: felt and wanted, done and off, the plot's two colours stay apart for the colour-blind",
    (theme) => {
      const colours = palettes[theme];
      const pairs = [
        ["felt", "wanted"],
        ["good", "off"],
        ["plotWarm", "plotCool"],
      ] as const;
      for (const matrix of Object.values(colourBlind)) {
        for (const [one, other] of pairs) {
          expect(labDistance(seenBy(colours[one], matrix), seenBy(colours[other], matrix))).toBeGreaterThan(leastApart);
        }
      }
    },
  );
});

/** Marks are ringed with ink, whatever colour is inside; a soft patch has no edge on purpose, and patterns are ink on their colour. */
function edgeOf(shape: Shape): Paint | null {
  switch (shape.kind) {
    case "line":
    case "frame":
      return shape.paint;
    case "outline":
      return shape.stroke;
    case "tag":
      return shape.ink;
    case "mark":
    case "pattern":
      return "ink";
    case "rect":
    case "ellipse":
      return null;
  }
}

/** All that the ground's two layers and the coach's ground can hold. A pattern fades with its band, so it is taken in full. */
function everythingDrawn(): DrawList {
  const frame = groundFrame({ x: 0, y: 0, width: 900, height: 800 }, sceneLayout, "right", "in-front");
  const shaft = { grip: { x: -0.3, y: 0.6 }, head: { x: -0.5, y: 0.1 } };
  const place = (subject: "butt-point" | "head-point", y: number) => ({ subject, x: 0, y, sdX: 0.02, sdY: 0.03 });
  const places = [place("butt-point", 0.2), place("head-point", 0.3), place("butt-point", -3)];
  return [
    ...drawStrips(frame, sceneLayout),
    ...drawStation(frame, sceneLayout, 4),
    ...[0, 1].flatMap((strength) =>
      demoAims.flatMap(({ felt, wanted }) => [
        ...drawAimBands(frame, { felt, wanted, strength }, 40),
        ...drawAimTags(frame, { felt, wanted, strength }, 40),
      ]),
    ),
    ...places.flatMap((one) => drawLive(frame, { shaft, place: one }, 40, 30)),
    ...drawMarks(frame, places, 40, 30),
    ...drawHistory(
      frame,
      [0, 3, 7, 20].map((age) => ({ subject: "butt-point", y: 0.1, sd: 0.03, age })),
      17,
    ),
  ];
}

/** A colour painted with some opacity over another, as canvas does it: in sRGB. */
function over(top: string, under: string, alpha: number): string {
  const mixed = channels(top).map((value, at) => Math.round(alpha * value + (1 - alpha) * (channels(under)[at] ?? 0)));
  return `#${mixed.map((value) => value.toString(16).padStart(2, "0")).join("")}`;
}

const channels = (hex: string): readonly number[] => [1, 3, 5].map((at) => parseInt(hex.slice(at, at + 2), 16));

/**
 * What dichromats see, on linear RGB: Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of
 * color vision deficiency", 2009, severity 1.0.
 */
const colourBlind = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
} as const;

/** A difference of 10 in CIE 1976 L*a*b* is plain side by side (2.3 is just noticed: Mahy et al. 1994); pattern and shape do the rest. */
const leastApart = 10;

function seenBy(hex: string, matrix: readonly (readonly number[])[]): readonly number[] {
  const linear = channels(hex).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return matrix.map((row) =>
    Math.min(
      1,
      Math.max(
        0,
        row.reduce((sum, part, at) => sum + part * (linear[at] ?? 0), 0),
      ),
    ),
  );
}

/** Between two linear sRGB colours, by IEC 61966-2-1's matrix and the D65 white. */
function labDistance(a: readonly number[], b: readonly number[]): number {
  const lab = ([r = 0, g = 0, blue = 0]: readonly number[]): readonly [number, number, number] => {
    const curve = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);
    const x = curve((0.4124 * r + 0.3576 * g + 0.1805 * blue) / 0.9505);
    const y = curve(0.2126 * r + 0.7152 * g + 0.0722 * blue);
    const z = curve((0.0193 * r + 0.1192 * g + 0.9505 * blue) / 1.089);
    return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
  };
  const [one, other] = [lab(a), lab(b)];
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
}
