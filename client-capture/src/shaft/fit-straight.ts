/** Where a thin thing was found at stations along a line: how far along, how far across (pixels), and its signed contrast, 0 where nothing was. */
export interface StationReadings {
  readonly along: Float64Array;
  readonly found: Float64Array;
  readonly strength: Float64Array;
  /** Set by the fit. */
  readonly weight: Float64Array;
}

export const makeStationReadings = (count: number): StationReadings => ({
  along: new Float64Array(count),
  found: new Float64Array(count),
  strength: new Float64Array(count),
  weight: new Float64Array(count),
});

export interface StraightFit {
  /** Place across at `middle`, and turn (tangent). */
  across: number;
  turn: number;
  angleSd: number;
  /** Of the place across where `along` is 0. */
  acrossSd: number;
  residual: number;
  support: number;
  contrast: number;
}

/** Blocks of neighbouring stations that are left out in turn. */
const blocks = 8;
/** An sd from so few blocks is itself uncertain: Student's t with 7 degrees of freedom has its 95 % at 2.36 and not at 1.96. */
const fewBlocks = 2.36 / 1.96;
/** What no fit gets under: pixels have a size. In pixels. */
const leastAcross = 0.05;

/**
 * Weighted least squares with Cauchy weights, and the errors by the jackknife over blocks of stations (Quenouille, Tukey): neighbours err together
 * and now and then a stretch follows something else, which no residual of single stations tells. Null where too few stations found anything.
 */
export function fitStraight(readings: StationReadings, middle: number): StraightFit | null {
  const { along, found, strength, weight } = readings;
  const count = along.length;
  let scale = Infinity;
  let line: Sums | null = null;
  let residual = 0;
  for (let round = 0; round < 4; round++) {
    sums.fill(0);
    for (let i = 0; i < count; i++) {
      const s = Math.abs(strength[i] as number);
      const r = (along[i] as number) - middle;
      const away = line === null ? 0 : ((found[i] as number) - line.across - line.turn * r) / scale;
      weight[i] = Math.min(s, 30) / (1 + away * away);
      addStation(Math.floor((i * blocks) / count), weight[i] as number, r, found[i] as number);
    }
    line = solveWithout(-1);
    if (line === null) return null;
    let squares = 0;
    let total = 0;
    for (let i = 0; i < count; i++) {
      const away = (found[i] as number) - line.across - line.turn * ((along[i] as number) - middle);
      squares += (weight[i] as number) * away * away;
      total += weight[i] as number;
    }
    residual = Math.sqrt(squares / total);
    scale = Math.max(0.35, 1.2 * residual);
  }
  if (line === null) return null;
  let support = 0;
  let contrast = 0;
  for (let i = 0; i < count; i++) {
    if (strength[i] === 0) continue;
    const away = ((found[i] as number) - line.across - line.turn * ((along[i] as number) - middle)) / scale;
    if (away * away > 4) continue;
    support++;
    contrast += strength[i] as number;
  }
  if (support < count / 5) return null;
  const { angleSd, acrossSd } = jackknife(middle);
  return {
    across: line.across,
    turn: line.turn,
    angleSd,
    acrossSd: Math.hypot(acrossSd, leastAcross),
    residual,
    support: support / count,
    contrast: contrast / support,
  };
}

interface Sums {
  across: number;
  turn: number;
}

/** For each block and, last, for all: sums of w, wr, wrr, wq, wrq. */
const sums = new Float64Array((blocks + 1) * 5);

function addStation(block: number, w: number, r: number, q: number): void {
  for (const row of [block, blocks]) {
    const at = row * 5;
    sums[at] = (sums[at] as number) + w;
    sums[at + 1] = (sums[at + 1] as number) + w * r;
    sums[at + 2] = (sums[at + 2] as number) + w * r * r;
    sums[at + 3] = (sums[at + 3] as number) + w * q;
    sums[at + 4] = (sums[at + 4] as number) + w * r * q;
  }
}

/** The line through all stations but those of a block; -1 leaves none out. */
function solveWithout(block: number): Sums | null {
  const of = (which: number): number =>
    (sums[blocks * 5 + which] as number) - (block < 0 ? 0 : (sums[block * 5 + which] as number));
  const [w, wr, wrr, wq, wrq] = [of(0), of(1), of(2), of(3), of(4)];
  const determinant = w * wrr - wr * wr;
  if (!(determinant > 1e-6 * w * w) || !(w > 0)) return null;
  return { across: (wq * wrr - wrq * wr) / determinant, turn: (w * wrq - wr * wq) / determinant };
}

function jackknife(middle: number): { readonly angleSd: number; readonly acrossSd: number } {
  let count = 0;
  let turn = 0;
  let turns = 0;
  let place = 0;
  let places = 0;
  for (let block = 0; block < blocks; block++) {
    if (sums[block * 5] === 0) continue;
    const line = solveWithout(block);
    if (line === null) continue;
    const atHands = line.across - line.turn * middle;
    count++;
    turn += line.turn;
    turns += line.turn * line.turn;
    place += atHands;
    places += atHands * atHands;
  }
  if (count < 3) return { angleSd: 0.05, acrossSd: 5 };
  const spread = (sum: number, squares: number): number =>
    fewBlocks * Math.sqrt((Math.max(0, squares - (sum * sum) / count) * (count - 1)) / count);
  return { angleSd: spread(turn, turns), acrossSd: spread(place, places) };
}
