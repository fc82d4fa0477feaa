import { bars, dots, ground } from "./icon-shapes.ts";

/** The mark as an SVG document. */
export function iconSvg(): string {
  const lines = bars.map(
    ({ from, to, width, colour }) =>
      `<path d="M${from.join(" ")}L${to.join(" ")}" stroke="${colour}" stroke-width="${width}" stroke-linecap="round"/>`,
  );
  const circles = dots.map(({ at, radius, colour }) => {
    const [x, y] = at;
    return `<circle cx="${x}" cy="${y}" r="${radius}" fill="${colour}"/>`;
  });
  const parts = [`<rect width="1" height="1" fill="${ground}"/>`, ...lines, ...circles];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1">${parts.join("")}</svg>\n`;
}
