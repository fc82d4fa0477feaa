import { findLineEnd } from "@overcue/client-capture/shaft/find-line-end";
import { expect, test } from "vitest";
import { quantile } from "../../accuracy/quantile.ts";
import { drawPicture, seeded, type DrawnLine } from "./draw-picture.ts";

const torso = 100;
const ground = 100;

/** Where the end of what `parts` draw (end to end, from the picture's middle) is found, less where it is, torso lengths; looked for from up to 0.12 of one off. */
function endsOf(
  count: number,
  noise: number,
  seed: number,
  parts: readonly Pick<DrawnLine, "length" | "width" | "level">[],
): (number | null)[] {
  const random = seeded(seed);
  const whole = parts.reduce((sum, { length }) => sum + length, 0);
  return Array.from({ length: count }, () => {
    const line = { x: 200 + random(), y: 200 + random(), angle: 2 * Math.PI * random() };
    let from = 0;
    const lines = parts.map((part) => {
      const drawn = {
        ...part,
        ...line,
        x: line.x + from * Math.cos(line.angle),
        y: line.y + from * Math.sin(line.angle),
      };
      from += part.length;
      return drawn;
    });
    const picture = drawPicture(400, 400, ground, lines, noise, random);
    const found = findLineEnd(picture, line, whole + 0.12 * torso * (2 * random() - 1), torso);
    return found === null ? null : (found - whole) / torso;
  });
}

test.each([
  ["brighter", 170],
  ["darker", 40],
])("T57 a plain end of a %s line is found to a fiftieth of a torso length, noise or not", (_, level) => {
  for (const noise of [0, 12]) {
    const found = endsOf(40, noise, 21, [{ length: 130, width: 2.4, level }]).filter((off) => off !== null);
    expect(found.length).toBeGreaterThanOrEqual(36);
    expect(quantile(found.map(Math.abs), 0.95)).toBeLessThan(0.02);
  }
});

test("T57 an end is not plain where a fainter line goes on beyond it", () => {
  const parts = [
    { length: 110, width: 2.4, level: 190 },
    { length: 25, width: 2.4, level: 125 },
  ];
  const offs = endsOf(40, 3, 22, parts).filter((off) => off !== null);
  // The fainter part's own end, if any, never the place where it begins.
  expect(offs.filter((off) => off < -0.1)).toEqual([]);
});

test("T57 nor where the line goes on as far as was looked, or hardly stands out", () => {
  const random = seeded(23);
  const line = { x: 60.3, y: 200.6, angle: 0.1 };
  const long = drawPicture(400, 400, ground, [{ ...line, length: 330, width: 2.4, level: 170 }], 3, random);
  expect(findLineEnd(long, line, 130, torso)).toBeNull();
  const faint = drawPicture(400, 400, ground, [{ ...line, length: 130, width: 2.4, level: 102 }], 0, random);
  expect(findLineEnd(faint, line, 130, torso)).toBeNull();
});
