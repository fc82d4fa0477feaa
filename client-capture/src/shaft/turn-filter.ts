import { turnRates } from "./turn-rates.ts";

/**
 * Odds over (rate of turn, direction) of the shaft in the picture and over "no shaft", as a discrete Bayes filter.
 * `belief` is rates * directions, rate-major, and sums to 1 - `absent`.
 */
export interface TurnFilter {
  readonly directions: number;
  belief: Float32Array;
  absent: number;
  /** Odds of the direction in which a shaft shows up, summing to 1; the owner changes them as the hands go. */
  readonly arrival: Float32Array;
  /** The same of the direction in which a shaft that was there comes out anew. */
  readonly renewal: Float32Array;
  readonly scratch: Float32Array;
  readonly kernel: Float32Array;
  readonly mixing: Float32Array;
}

export interface TurnModel {
  /** Chance per second that the shaft shows up, goes, or comes out anew in another direction (through end-on). */
  readonly appear: number;
  readonly vanish: number;
  readonly jump: number;
  /** The same chance where the shaft is seen at its length. */
  readonly jumpLong: number;
  /** Wander of the rate, in steps of the rate ladder per square root of a second. */
  readonly rateWander: number;
  /** Wander of the direction that no rate explains, radians per square root of a second, and at least per picture. */
  readonly wander: number;
}

const widest = 40;

/** `arrival`: odds of the direction in which a shaft shows up, summing to 1. */
export function makeTurnFilter(arrival: Float32Array): TurnFilter {
  const directions = arrival.length;
  const cells = turnRates.length * directions;
  const filter: TurnFilter = {
    directions,
    belief: new Float32Array(cells),
    absent: 0.5,
    arrival: arrival.slice(),
    renewal: new Float32Array(directions).fill(1 / directions),
    scratch: new Float32Array(cells),
    kernel: new Float32Array(turnRates.length * (2 * widest + 1)),
    mixing: new Float32Array(turnRates.length * turnRates.length),
  };
  restartTurnFilter(filter);
  return filter;
}

export function restartTurnFilter(filter: TurnFilter): void {
  filter.absent = 0.5;
  const { belief, arrival, directions } = filter;
  for (let i = 0; i < belief.length; i++) belief[i] = (0.5 * (arrival[i % directions] as number)) / turnRates.length;
}

/**
 * Moves the odds `seconds` on: rates wander, directions turn by their rates, a little comes out anew. `long`, 0 to 1: how far the shaft was seen at its length, so that
 * it cannot have come out anew.
 */
export function predictTurn(filter: TurnFilter, seconds: number, long: number, model: TurnModel): void {
  const { belief, scratch } = filter;
  prepareMixing(filter, seconds, model);
  prepareKernels(filter, seconds, model, 1);
  mixRates(filter, belief, scratch, false);
  turnDirections(filter, seconds, 1, scratch, belief);
  const { jump, vanish, appear } = chances(seconds, long, model);
  const present = sum(belief);
  const absent = filter.absent;
  const stay = (1 - jump) * (1 - vanish);
  const arriving = (absent * appear) / turnRates.length;
  const anew = (present * jump * (1 - vanish)) / turnRates.length;
  const { arrival, renewal, directions } = filter;
  for (let rate = 0, at = 0; rate < turnRates.length; rate++) {
    for (let i = 0; i < directions; i++, at++) {
      belief[at] = (belief[at] as number) * stay + arriving * (arrival[i] as number) + anew * (renewal[i] as number);
    }
  }
  filter.absent = absent * (1 - appear) + present * vanish;
}

/**
 * The same step seen from its end (the adjoint of `predictTurn`), for the backward half of a full pass: `belief` and `absent` hold how
 * likely the later pictures are from each state, up to a common factor.
 */
export function predictTurnBack(filter: TurnFilter, seconds: number, long: number, model: TurnModel): void {
  const { belief, scratch } = filter;
  prepareMixing(filter, seconds, model);
  prepareKernels(filter, seconds, model, -1);
  const { jump, vanish, appear } = chances(seconds, long, model);
  let arriving = 0;
  let anew = 0;
  for (let i = 0; i < belief.length; i++) {
    arriving += (belief[i] as number) * (filter.arrival[i % filter.directions] as number);
    anew += (belief[i] as number) * (filter.renewal[i % filter.directions] as number);
  }
  arriving /= turnRates.length;
  anew /= turnRates.length;
  const absent = filter.absent;
  turnDirections(filter, seconds, -1, belief, scratch);
  mixRates(filter, scratch, belief, true);
  const stay = (1 - jump) * (1 - vanish);
  const rest = anew * jump * (1 - vanish) + absent * vanish;
  for (let i = 0; i < belief.length; i++) belief[i] = (belief[i] as number) * stay + rest;
  filter.absent = absent * (1 - appear) + arriving * appear;
}

const chances = (
  seconds: number,
  long: number,
  model: TurnModel,
): { jump: number; vanish: number; appear: number } => ({
  jump: 1 - Math.exp(-(model.jump * (1 - long) + model.jumpLong * long) * seconds),
  vanish: 1 - Math.exp(-model.vanish * seconds),
  appear: 1 - Math.exp(-model.appear * seconds),
});

/** Multiplies in the likelihood of each direction against "nothing there" (1), and makes the odds sum to 1 again. */
export function weighTurn(filter: TurnFilter, likelihood: Float32Array): void {
  const { directions, belief } = filter;
  let total = filter.absent;
  for (let rate = 0; rate < turnRates.length; rate++) {
    for (let i = 0; i < directions; i++) {
      const value = (belief[rate * directions + i] as number) * (likelihood[i] as number);
      belief[rate * directions + i] = value;
      total += value;
    }
  }
  const scale = 1 / total;
  for (let i = 0; i < belief.length; i++) belief[i] = (belief[i] as number) * scale;
  filter.absent *= scale;
}

function sum(values: Float32Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i] as number;
  return total;
}

/** Odds of stepping from one rate of the ladder to another, each row summing to 1. The same both ways in time. */
function prepareMixing(filter: TurnFilter, seconds: number, model: TurnModel): void {
  const count = turnRates.length;
  const spread = model.rateWander * Math.sqrt(seconds) + 0.15;
  for (let from = 0; from < count; from++) {
    let total = 0;
    for (let to = 0; to < count; to++) {
      const away = (to - from) / spread;
      const odds = Math.exp(-0.5 * away * away) + 1e-4;
      filter.mixing[from * count + to] = odds;
      total += odds;
    }
    for (let to = 0; to < count; to++) {
      filter.mixing[from * count + to] = (filter.mixing[from * count + to] as number) / total;
    }
  }
}

function mixRates(filter: TurnFilter, from: Float32Array, into: Float32Array, transposed: boolean): void {
  const { directions, mixing } = filter;
  const count = turnRates.length;
  into.fill(0);
  for (let a = 0; a < count; a++) {
    for (let b = 0; b < count; b++) {
      const odds = mixing[transposed ? b * count + a : a * count + b] as number;
      if (odds < 2e-4) continue;
      const source = a * directions;
      const target = b * directions;
      for (let i = 0; i < directions; i++) {
        into[target + i] = (into[target + i] as number) + odds * (from[source + i] as number);
      }
    }
  }
}

/** For each rate the odds of ending so many directions away from the whole number of directions that the rate turns by. */
function prepareKernels(filter: TurnFilter, seconds: number, model: TurnModel, forward: 1 | -1): void {
  const step = (2 * Math.PI) / filter.directions;
  const span = 2 * widest + 1;
  for (let rate = 0; rate < turnRates.length; rate++) {
    const turn = (forward * (turnRates[rate] as number) * seconds) / step;
    const rest = turn - Math.round(turn);
    const below = turnRates[Math.max(0, rate - 1)] as number;
    const above = turnRates[Math.min(turnRates.length - 1, rate + 1)] as number;
    const width = (0.3 * (above - below) * seconds) / 2;
    const wander = Math.hypot(width, model.wander * Math.sqrt(seconds), 0.25 * step);
    const spread = Math.max(0.3, wander / step);
    let total = 0;
    for (let k = -widest; k <= widest; k++) {
      const away = (k - rest) / spread;
      const odds = Math.abs(away) < 4 ? Math.exp(-0.5 * away * away) : 0;
      filter.kernel[rate * span + k + widest] = odds;
      total += odds;
    }
    for (let k = 0; k < span; k++) {
      filter.kernel[rate * span + k] = (filter.kernel[rate * span + k] as number) / total;
    }
  }
}

function turnDirections(
  filter: TurnFilter,
  seconds: number,
  forward: 1 | -1,
  from: Float32Array,
  into: Float32Array,
): void {
  const { directions, kernel } = filter;
  const step = (2 * Math.PI) / directions;
  const span = 2 * widest + 1;
  into.fill(0);
  for (let rate = 0; rate < turnRates.length; rate++) {
    const shift = Math.round((forward * (turnRates[rate] as number) * seconds) / step);
    const base = rate * directions;
    for (let k = -widest; k <= widest; k++) {
      const odds = kernel[rate * span + k + widest] as number;
      if (odds < 1e-4) continue;
      let target = (((shift + k) % directions) + directions) % directions;
      for (let i = 0; i < directions; i++) {
        into[base + target] = (into[base + target] as number) + odds * (from[base + i] as number);
        if (++target === directions) target = 0;
      }
    }
  }
}
