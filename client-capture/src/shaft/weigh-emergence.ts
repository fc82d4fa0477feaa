/**
 * A shaft that comes out of end-on with the hands high comes out where shafts then are (`places`, odds summing to 1): its likelihood takes them in once, `share`
 * of them in this picture.
 */
export function weighEmergence(likelihood: Float32Array, places: Float32Array, share: number): void {
  if (share <= 0) return;
  for (let i = 0; i < likelihood.length; i++) {
    likelihood[i] = (likelihood[i] as number) * ((places[i] as number) * places.length) ** share;
  }
}
