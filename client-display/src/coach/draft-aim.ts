import { bandAt } from "@overcue/shared-geometry/band-interval";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import type { Aim } from "@overcue/shared-geometry/wire/practice";

/** The aim as it would stand with another exaggeration (metres along y): the felt band moves along, the wanted one stays. */
export function draftAim(aim: Aim, exaggerateBy: number, layout: BandLayout): Aim {
  const shift = exaggerateBy - aim.exaggerateBy;
  const felt = { from: aim.felt.from + shift, to: aim.felt.to + shift };
  return { ...aim, exaggerateBy, felt, feltBand: bandAt((felt.from + felt.to) / 2, layout) };
}

/** A signed exaggeration in words: "25 cm beyond the ball", "10 cm towards the heels", "none". */
export function exaggerationWords(metresAlongY: number): string {
  const centimetres = Math.round(Math.abs(metresAlongY) * 100);
  if (centimetres === 0) return "none";
  return `${centimetres} cm ${metresAlongY < 0 ? "beyond" : "towards the heels"}`;
}
