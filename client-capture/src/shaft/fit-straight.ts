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
 *
 * What is brighter than its sides and what is darker have one direction, but each a place across of its own: lit from one side, a steel shaft shows as its bright edge and its
 * dark grip as the middle, and one line through both would turn where the grip ends. `across` is the mean of the two places, by weight.
 */
export function fitStraight(readings: StationReadings, middle: number): StraightFit | null {
  const { along, found, strength, weight } = readings;
  const count = along.length;
  let scale = Infinity;
  let line: Line | null = null;
  let residual = 0;
  for (let round = 0; round < 4; round++) {
    sums.fill(0);
    for (let i = 0; i < count; i++) {
      const away = line === null ? 0 : awayFrom(line, readings, i, middle) / scale;
      weight[i] = Math.min(Math.abs(strength[i] as number), 30) / (1 + away * away);
      const block = Math.floor((i * blocks) / count);
      addStation(block, isDark(readings, i), weight[i] as number, (along[i] as number) - middle, found[i] as number);
    }
    line = solveWithout(-1);
    if (line === null) return null;
    let squares = 0;
    let total = 0;
    for (let i = 0; i < count; i++) {
      squares += (weight[i] as number) * awayFrom(line, readings, i, middle) ** 2;
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
    const away = awayFrom(line, readings, i, middle) / scale;
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

/** Where the line passes at the middle: on the whole, where it is bright, where it is dark. */
interface Line {
  across: number;
  bright: number;
  dark: number;
  turn: number;
}

const isDark = ({ strength }: StationReadings, station: number): boolean => (strength[station] as number) < 0;

function awayFrom(line: Line, readings: StationReadings, station: number, middle: number): number {
  const own = isDark(readings, station) ? line.dark : line.bright;
  return (readings.found[station] as number) - own - line.turn * ((readings.along[station] as number) - middle);
}

const each = 5;
/** For each block and, last, for all: sums of w, wr, wrr, wq, wrq; those of the bright stations, then those of the dark ones. */
const sums = new Float64Array(2 * (blocks + 1) * each);
const darkFrom = (blocks + 1) * each;

function addStation(block: number, dark: boolean, w: number, r: number, q: number): void {
  for (const row of [block, blocks]) {
    const at = (dark ? darkFrom : 0) + row * each;
    sums[at] = (sums[at] as number) + w;
    sums[at + 1] = (sums[at + 1] as number) + w * r;
    sums[at + 2] = (sums[at + 2] as number) + w * r * r;
    sums[at + 3] = (sums[at + 3] as number) + w * q;
    sums[at + 4] = (sums[at + 4] as number) + w * r * q;
  }
}

/** The line through all stations but those of a block; -1 leaves none out. */
function solveWithout(block: number): Line | null {
  const of = (which: number): number =>
    (sums[blocks * each + which] as number) - (block < 0 ? 0 : (sums[block * each + which] as number));
  const [w, wr, wrr, wq, wrq] = [of(0), of(1), of(2), of(3), of(4)];
  const [v, vr, vrr] = [of(darkFrom), of(darkFrom + 1), of(darkFrom + 2)];
  const [vq, vrq] = [of(darkFrom + 3), of(darkFrom + 4)];
  // Each about its own middle: what lies between the two places is no turn.
  const [shareW, shareV] = [w > 0 ? 1 / w : 0, v > 0 ? 1 / v : 0];
  const lever = wrr - wr * wr * shareW + vrr - vr * vr * shareV;
  if (!(lever > 1e-6 * (wrr + vrr)) || !(w + v > 0)) return null;
  const turn = (wrq - wr * wq * shareW + vrq - vr * vq * shareV) / lever;
  const bright = (wq - turn * wr) * shareW;
  const dark = (vq - turn * vr) * shareV;
  return { turn, bright, dark, across: (w * bright + v * dark) / (w + v) };
}

function jackknife(middle: number): { readonly angleSd: number; readonly acrossSd: number } {
  let count = 0;
  let turn = 0;
  let turns = 0;
  let place = 0;
  let places = 0;
  for (let block = 0; block < blocks; block++) {
    if (sums[block * each] === 0 && sums[darkFrom + block * each] === 0) continue;
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
