/**
 * The ladder of turning rates, radians a second: close together where the club is slow, far apart where it is fast. The top is above the
 * published peak of the lead hand, 1650 +- 211 degrees a second (Marsan et al. 2019): what the club turns at in the picture about impact, seen from down the line, is up to twice that.
 */
export const turnRates: readonly number[] = [
  -54, -35, -22, -14, -9.5, -6, -3.6, -2, -1, -0.4, 0, 0.4, 1, 2, 3.6, 6, 9.5, 14, 22, 35, 54,
];
