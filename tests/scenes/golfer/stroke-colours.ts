import { scaleColour, timesColour, type Colour } from "../colour.ts";
import { lightOn, mirrorIn, type Light } from "../light.ts";
import type { ViewDirection } from "../view.ts";
import type { Material } from "./piece.ts";

const strips = 5;
const lit = new Float64Array(3);

/**
 * The colours of a thin round thing across its width, left to right seen along `axis` (camera's axes, any length):
 * steel mirrors sky and ground, graphite is dark with a little gloss, rubber is matt, paint is bright with a little gloss.
 */
export function strokeColours(material: Material, axis: ViewDirection, light: Light): readonly Colour[] {
  const flat = Math.hypot(axis[0], axis[1]);
  const [rx, ry] = flat < 1e-9 ? [1, 0] : [-axis[1] / flat, axis[0] / flat];
  const length = Math.hypot(flat, axis[2]) || 1;
  const tilt = axis[2] / length;
  const facing: ViewDirection = [ry * tilt, -rx * tilt, -flat / length];
  const colours: Colour[] = [];
  for (let strip = 0; strip < strips; strip++) {
    const side = (2 * strip + 1) / strips - 1;
    const front = Math.sqrt(1 - side * side);
    const n: ViewDirection = [side * rx + front * facing[0], side * ry + front * facing[1], front * facing[2]];
    lightOn(light, n[0], n[1], n[2], lit);
    const matt = timesColour(material.colour, [lit[0] ?? 0, lit[1] ?? 0, lit[2] ?? 0]);
    colours.push(finish(material, matt, mirrorIn(light, n, material.make === "steel" ? 24 : 40)));
  }
  return colours;
}

function finish(material: Material, matt: Colour, mirrored: Colour): Colour {
  switch (material.make) {
    case "steel":
      return add(scaleColour(matt, 0.18), scaleColour(mirrored, 0.55));
    case "graphite":
      return add(matt, scaleColour(mirrored, 0.05));
    case "paint":
      return add(matt, scaleColour(mirrored, 0.04));
    case "rubber":
    case "soft":
      return matt;
  }
}

const add = (a: Colour, b: Colour): Colour => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
