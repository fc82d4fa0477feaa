import { gaussian, type Random } from "./random.ts";

/** A square of numbers that repeats without a seam; the side is a power of two. */
export interface Tile {
  readonly side: number;
  readonly values: Float32Array;
}

/**
 * Smooth random values in about [-1, 1], one knot every `knot` cells: bilinear between seeded knots with an eased step.
 * `side` and `knot` are powers of two.
 */
function makeNoiseTile(random: Random, side: number, knot: number): Tile {
  const knots = side / knot;
  const grid = Float32Array.from({ length: knots * knots }, () => 2 * random() - 1);
  const values = new Float32Array(side * side);
  for (let row = 0; row < side; row++) {
    const top = Math.floor(row / knot);
    const bottom = (top + 1) % knots;
    const down = ease((row % knot) / knot);
    for (let column = 0; column < side; column++) {
      const left = Math.floor(column / knot);
      const right = (left + 1) % knots;
      const across = ease((column % knot) / knot);
      const upper = mix(grid[top * knots + left] ?? 0, grid[top * knots + right] ?? 0, across);
      const lower = mix(grid[bottom * knots + left] ?? 0, grid[bottom * knots + right] ?? 0, across);
      values[row * side + column] = mix(upper, lower, down);
    }
  }
  return { side, values };
}

/** Octaves of smooth noise, each half as coarse and `fall` as strong as the one before, scaled to a standard deviation of 1. */
export function makeFractalTile(random: Random, side: number, coarsest: number, fall: number): Tile {
  const values = new Float32Array(side * side);
  for (let knot = coarsest, weight = 1; knot >= 1; knot /= 2, weight *= fall) {
    const octave = makeNoiseTile(random, side, knot).values;
    for (let index = 0; index < values.length; index++) {
      values[index] = (values[index] ?? 0) + weight * (octave[index] ?? 0);
    }
  }
  return { side, values: standardise(values) };
}

/**
 * Grain as a phone's picture has it: white noise, spread over neighbours by the colour filter and the noise filter.
 * `spread` 0 leaves it white; 0.3 is strongly smeared. Standard deviation 1.
 */
export function makeGrainTile(random: Random, side: number, spread: number): Tile {
  const white = Float32Array.from({ length: side * side }, () => gaussian(random));
  const mask = side - 1;
  const values = new Float32Array(side * side);
  for (let row = 0; row < side; row++) {
    for (let column = 0; column < side; column++) {
      const up = ((row - 1) & mask) * side + column;
      const down = ((row + 1) & mask) * side + column;
      const left = row * side + ((column - 1) & mask);
      const right = row * side + ((column + 1) & mask);
      const around = (white[up] ?? 0) + (white[down] ?? 0) + (white[left] ?? 0) + (white[right] ?? 0);
      values[row * side + column] = (white[row * side + column] ?? 0) + spread * around;
    }
  }
  return { side, values: standardise(values) };
}

/** The tile's value at any place, smoothly between cells. */
export function sampleTile(tile: Tile, x: number, y: number): number {
  const { side, values } = tile;
  const mask = side - 1;
  const left = Math.floor(x);
  const top = Math.floor(y);
  const across = x - left;
  const down = y - top;
  const upper = (top & mask) * side;
  const lower = ((top + 1) & mask) * side;
  const near = left & mask;
  const far = (left + 1) & mask;
  return mix(
    mix(values[upper + near] ?? 0, values[upper + far] ?? 0, across),
    mix(values[lower + near] ?? 0, values[lower + far] ?? 0, across),
    down,
  );
}

function standardise(values: Float32Array): Float32Array {
  let sum = 0;
  let squares = 0;
  for (const value of values) {
    sum += value;
    squares += value * value;
  }
  const mean = sum / values.length;
  const scale = 1 / Math.sqrt(squares / values.length - mean * mean);
  return values.map((value) => (value - mean) * scale);
}

const mix = (from: number, to: number, share: number): number => from + (to - from) * share;
const ease = (share: number): number => share * share * (3 - 2 * share);
