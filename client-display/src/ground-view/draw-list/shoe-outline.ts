import { groundPoint, type Point } from "@overcue/shared-geometry/point";

/** Half a shoe's width at shares of its length from the heel, outer and inner edge: drawn by eye. */
const outline: readonly (readonly [along: number, outer: number, inner: number])[] = [
  [0.0, 0.12, -0.12],
  [0.02, 0.26, -0.26],
  [0.08, 0.36, -0.36],
  [0.18, 0.4, -0.39],
  [0.32, 0.39, -0.35],
  [0.46, 0.41, -0.32],
  [0.6, 0.46, -0.37],
  [0.74, 0.49, -0.46],
  [0.85, 0.43, -0.48],
  [0.93, 0.31, -0.41],
  [0.98, 0.14, -0.27],
  [1.0, -0.02, -0.1],
];

/** A shoe is about 0.4 of its length wide. */
const widthShare = 0.4;
/** The feet stand about a shoulder's width apart, turned out a little; a picture to orient by, nothing is measured from it. */
const halfStance = 0.21;
const turnOut = (12 * Math.PI) / 180;

/** The two shoes on the ground between heel line and toe line: lead foot first. */
export function shoeOutlines(toeLine: number, heelLine: number): readonly (readonly Point<"ground">[])[] {
  return [1, -1].map((side) => {
    const length = (heelLine - toeLine) / Math.cos(turnOut);
    const edge = (which: 1 | 2): (readonly [number, number])[] =>
      outline.map((row) => [row[0] * length, row[which] * widthShare * length]);
    return [...edge(1), ...edge(2).reverse()].map(([along, across]) => {
      const x = across * Math.cos(turnOut) + along * Math.sin(turnOut);
      const y = along * Math.cos(turnOut) - across * Math.sin(turnOut);
      return groundPoint(side * (halfStance + x), heelLine - y);
    });
  });
}
