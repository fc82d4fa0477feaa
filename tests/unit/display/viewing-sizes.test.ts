import { metres } from "@overcue/shared-geometry/units";
import { fitChoices } from "@overcue/client-display/sizes/fit-choices";
import { fitSizes } from "@overcue/client-display/sizes/fit-sizes";
import { readableAt } from "@overcue/client-display/sizes/readable-from";
import { fitVerdict } from "@overcue/client-display/sizes/fit-verdict";
import { layoutPractice } from "@overcue/client-display/sizes/layout-practice";
import {
  angleOfHeight,
  assumedPixelsPerMillimetre,
  capitalShare,
  heightOfAngle,
  requiredSizes,
} from "@overcue/client-display/sizes/viewing-sizes";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const viewing = fc.record({
  distance: fc.double({ min: 0.4, max: 8, noNaN: true }).map(metres),
  pixelsPerMillimetre: fc.double({ min: 1, max: 30, noNaN: true }),
});
const screen = fc.record({ width: fc.integer({ min: 300, max: 4000 }), height: fc.integer({ min: 300, max: 3000 }) });
const atThreeMetres = { distance: metres(3), pixelsPerMillimetre: assumedPixelsPerMillimetre };

describe("D4 sizes from the viewing distance", () => {
  test("D4 20 arc minutes at 3 m are 17.5 mm (ISO 9241-3 as quoted by IBM)", () => {
    expect(heightOfAngle(20, atThreeMetres) / assumedPixelsPerMillimetre).toBeCloseTo(17.45, 2);
  });

  test("D4 the capitals of the key word subtend 40 arc minutes, other words 20, marks 40", () => {
    fc.assert(
      fc.property(viewing, (seen) => {
        const { keyWord, mustRead, mark } = requiredSizes(seen);
        expect(angleOfHeight((keyWord * capitalShare) as typeof mark, seen)).toBeCloseTo(40, 6);
        expect(angleOfHeight((mustRead * capitalShare) as typeof mark, seen)).toBeCloseTo(20, 6);
        expect(angleOfHeight(mark, seen)).toBeCloseTo(40, 6);
      }),
    );
  });

  test("D4 a screen meets the rule exactly up to the distance that it names", () => {
    fc.assert(
      fc.property(screen, viewing, (size, seen) => {
        const { readableFrom } = readableAt(size, seen);
        expect(readableAt(size, { ...seen, distance: metres(readableFrom * 0.999) }).meetsRule).toBe(true);
        expect(readableAt(size, { ...seen, distance: metres(readableFrom * 1.001) }).meetsRule).toBe(false);
      }),
    );
  });

  test("D4 no view claims to meet the rule with anything smaller than required", () => {
    fc.assert(
      fc.property(screen, viewing, fc.integer({ min: 10, max: 200 }), (size, seen, letters) => {
        const required = requiredSizes(seen);
        const verdict = fitVerdict(size, seen, { lines: [letters, 20], labels: [4, 4], count: 25 });
        expect(!verdict.meetsRule || verdict.mustRead >= required.mustRead - 1e-9).toBe(true);
        expect(!verdict.meetsRule || verdict.mark >= required.mark - 1e-9).toBe(true);
        const choices = fitChoices(size, seen, 7);
        expect(!choices.meetsRule || choices.mustRead >= required.mustRead - 1e-9).toBe(true);
      }),
    );
  });

  test("D4 ground and words share the screen without a gap or an overlap", () => {
    fc.assert(
      fc.property(screen, viewing, (size, seen) => {
        const { keyWord, mustRead } = fitSizes(size, seen);
        const { ground, words } = layoutPractice(size, keyWord, mustRead);
        expect(ground.width * ground.height + words.width * words.height).toBeCloseTo(size.width * size.height, 3);
        expect(ground.width).toBeGreaterThan(0.3 * size.width);
        expect(ground.height).toBeGreaterThan(0.3 * size.height);
      }),
    );
  });
});
