/**
 * The ladder of turning rates, radians a second: close together where the club is slow, far apart where it is fast. The top is above the
 * published peak of the lead hand, 1650 +- 211 degrees a second (Marsan et al. 2019).
 */
export const turnRates: readonly number[] = [
  -36, -27, -20, -14, -9.5, -6, -3.6, -2, -1, -0.4, 0, 0.4, 1, 2, 3.6, 6, 9.5, 14, 20, 27, 36,
];
