import { fitStraight, type StationReadings, type StraightFit } from "./fit-straight.ts";

/** A line as the part after the step has it, and how far aside the part before it lies, pixels: 0 where no step was found. */
export interface SteppedFit extends StraightFit {
  step: number;
}

/** Places where the rod may end: so many parts of the line, of which at least two lie on either side. */
const parts = 16;
/** A step leaves at most this share of the weighted squares that one straight line leaves. */
const leastGain = 0.5;
/** Distance from the line at which a station counts half, pixels. */
const scale = 0.7;

/**
 * Fits a thing that is two parallel lines one after the other: a rod lies beside the shaft and ends before it, so that what is seen goes aside there, by `most` pixels at
 * most. Both have the shaft's direction; the place across is that of the part after the step. Where no step explains it clearly better it is the straight fit.
 * Null where too few stations found anything.
 */
export function fitStepped(readings: StationReadings, middle: number, most: number): SteppedFit | null {
  const straight = fitStraight(readings, middle);
  if (straight === null) return null;
  const none = { ...straight, step: 0 };
  const { first, step, widening } = bestStep(readings, middle, most);
  if (step === 0) return none;
  moveAside(readings.found, first, -step);
  const fit = fitStraight(readings, middle);
  moveAside(readings.found, first, step);
  return fit === null ? none : { ...fit, angleSd: fit.angleSd * widening, step };
}

function moveAside(found: Float64Array, count: number, by: number): void {
  for (let i = 0; i < count; i++) found[i] = (found[i] as number) + by;
}

interface Step {
  /** Stations before it. */
  first: number;
  step: number;
  /** How many times worse the direction is known for the step's being unknown. */
  widening: number;
}

function bestStep(readings: StationReadings, middle: number, most: number): Step {
  const count = readings.along.length;
  const without = solve(readings, middle, 0);
  const best: Step = { first: 0, step: 0, widening: 1 };
  let least = leastGain * without.squares;
  for (let part = 2; part <= parts - 2; part++) {
    const first = Math.round((part * count) / parts);
    const { squares, step, turnVariance } = solve(readings, middle, first);
    if (!(squares < least) || Math.abs(step) > most) continue;
    least = squares;
    best.first = first;
    best.step = step;
    best.widening = Math.sqrt(Math.max(1, turnVariance / without.turnVariance));
  }
  return best;
}

/** Place across, turn and step of the least weighted squares, what is left of them, and the turn's variance in units of a station's. */
const answer = { across: 0, turn: 0, step: 0, squares: 0, turnVariance: 0 };

/** Least squares with the first `first` stations aside, twice: the second time what lies off counts less (Geman-McClure, so that the squares that are left compare). */
function solve({ along, found, strength }: StationReadings, middle: number, first: number): Readonly<typeof answer> {
  const { length } = along;
  for (let round = 0; round < 3; round++) {
    let [w, wr, wrr, wn, wrn, wq, wrq, wnq] = [0, 0, 0, 0, 0, 0, 0, 0];
    for (let i = 0; i < length; i++) {
      const r = (along[i] as number) - middle;
      const q = found[i] as number;
      const near = i < first ? 1 : 0;
      const away = round === 0 ? 0 : (q - answer.across - answer.turn * r - answer.step * near) / scale;
      const s = Math.min(Math.abs(strength[i] as number), 30) / (1 + away * away) ** 2;
      w += s;
      wr += s * r;
      wrr += s * r * r;
      wn += s * near;
      wrn += s * r * near;
      wq += s * q;
      wrq += s * r * q;
      wnq += s * q * near;
    }
    // The step is taken out of the others first: where there is none its row is empty.
    const share = wn > 0 ? 1 / wn : 0;
    const [a, b, c] = [w - wn * wn * share, wr - wn * wrn * share, wrr - wrn * wrn * share];
    const [u, v] = [wq - wn * wnq * share, wrq - wrn * wnq * share];
    const determinant = a * c - b * b;
    if (!(determinant > 1e-9 * w * wrr)) return Object.assign(answer, { squares: Infinity, step: 0 });
    answer.across = (u * c - v * b) / determinant;
    answer.turn = (a * v - b * u) / determinant;
    answer.step = (wnq - wn * answer.across - wrn * answer.turn) * share;
    answer.turnVariance = a / determinant;
  }
  answer.squares = 0;
  for (let i = 0; i < length; i++) {
    const near = i < first ? 1 : 0;
    const away =
      ((found[i] as number) - answer.across - answer.turn * ((along[i] as number) - middle) - answer.step * near) /
      scale;
    answer.squares += (Math.min(Math.abs(strength[i] as number), 30) * away * away) / (1 + away * away);
  }
  return { ...answer };
}
