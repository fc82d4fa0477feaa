/** Which pictures of a clip are looked at: every so many-th, beginning with the one of that number. */
export interface Thinning {
  readonly every: number;
  readonly from: number;
}
