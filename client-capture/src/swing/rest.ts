/** How the club stood before the rep set off: medians over the rest, or null where it never rested. */
export interface Rest {
  readonly from: number;
  readonly to: number;
  readonly angle: number;
  readonly hands: { readonly x: number; readonly y: number; readonly z: number };
}
