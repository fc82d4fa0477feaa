/**
 * When a backswing of unit length has turned the club by `share` of its way: the minimum-jerk profile 10 t^3 - 15 t^4 + 6 t^5 inverted
 * (Flash and Hogan 1985, from memory). Ends map to ends.
 */
export function backswingTime(share: number): number {
  let low = 0;
  let high = 1;
  for (let round = 0; round < 50; round++) {
    const t = (low + high) / 2;
    if (t * t * t * (10 + t * (-15 + 6 * t)) < share) low = t;
    else high = t;
  }
  return (low + high) / 2;
}

/** The same for a downswing, which gathers speed evenly until impact: turned by t^2. */
export function downswingTime(share: number): number {
  return Math.sqrt(Math.min(1, Math.max(0, share)));
}
