/** Linear light, red green blue; 1 is a white sheet in the scene's main light. */
export type Colour = readonly [number, number, number];

/** Linear light of a colour given as #rrggbb (IEC 61966-2-1 transfer curve). */
export function colourFromHex(hex: string): Colour {
  const value = Number.parseInt(hex.slice(1), 16);
  return colourFromBytes((value >> 16) & 255, (value >> 8) & 255, value & 255);
}

/** The same of red, green and blue from 0 to 255. */
export const colourFromBytes = (red: number, green: number, blue: number): Colour => [
  linear(red),
  linear(green),
  linear(blue),
];

export const mixColour = (from: Colour, to: Colour, share: number): Colour => [
  from[0] + (to[0] - from[0]) * share,
  from[1] + (to[1] - from[1]) * share,
  from[2] + (to[2] - from[2]) * share,
];

export const scaleColour = (colour: Colour, gain: number): Colour => [
  colour[0] * gain,
  colour[1] * gain,
  colour[2] * gain,
];

export const timesColour = (a: Colour, b: Colour): Colour => [a[0] * b[0], a[1] * b[1], a[2] * b[2]];

function linear(byte: number): number {
  const share = byte / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}
