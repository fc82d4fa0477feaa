/**
 * Share of a normal distribution (mean 0, sd 1) that lies below `z`.
 * Complementary error function by the continued fraction and series of Abramowitz and Stegun 7.1.5 and 7.1.14, to about 1e-13;
 * -Infinity gives 0, Infinity 1.
 */
export function normalBelow(z: number): number {
  if (z === Infinity) return 1;
  if (z === -Infinity) return 0;
  const x = Math.abs(z) / Math.SQRT2;
  const tail = x < 2.5 ? 0.5 * (1 - seriesErf(x)) : 0.5 * fractionErfc(x);
  return z > 0 ? 1 - tail : tail;
}

function seriesErf(x: number): number {
  let term = x;
  let sum = x;
  for (let n = 1; n < 60; n++) {
    term *= (-x * x) / n;
    sum += term / (2 * n + 1);
  }
  return (2 / Math.sqrt(Math.PI)) * sum;
}

function fractionErfc(x: number): number {
  let fraction = x;
  for (let n = 60; n >= 1; n--) fraction = x + n / 2 / fraction;
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / fraction;
}
