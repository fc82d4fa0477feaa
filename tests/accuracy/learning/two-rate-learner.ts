/**
 * The two-rate model of motor adaptation: x(n+1) = A x(n) + B e(n) for a fast and a slow state, whose sum is the adaptation. Form and constants after Smith,
 * Ghazizadeh and Shadmehr 2006 (PLoS Biology), the constants from memory and not checked against the paper.
 */
const twoRate = { fastA: 0.59, fastB: 0.21, slowA: 0.992, slowB: 0.02 } as const;

export interface LearnerState {
  readonly fast: number;
  readonly slow: number;
}

export const untaught: LearnerState = { fast: 0, slow: 0 };

const adaptation = ({ fast, slow }: LearnerState): number => fast + slow;

/** After one rep with error `error` (metres). */
export function learn({ fast, slow }: LearnerState, error: number): LearnerState {
  return { fast: twoRate.fastA * fast + twoRate.fastB * error, slow: twoRate.slowA * slow + twoRate.slowB * error };
}

/** After a night: the fast state is gone, the slow one keeps this share (our assumption, no source). */
export function sleep({ slow }: LearnerState, kept: number): LearnerState {
  return { fast: 0, slow: slow * kept };
}

/**
 * How a cue enters the model, which the paper does not say. `goal`: the share of the cue that carries over becomes the golfer's goal, and the adaptation closes in on it
 * (the first rep is the habit). `at-once`: that share arrives at once, and the adaptation works on what is still missing from the wanted place.
 */
export type Reading = "goal" | "at-once";

/** Where the club points, metres from the habit, for a cue `felt` metres from the habit; and the error that is learnt from. */
export function respond(
  reading: Reading,
  state: LearnerState,
  golfer: { readonly carryOver: number; readonly change: number },
  felt: number,
): { readonly reached: number; readonly error: number } {
  if (reading === "goal") {
    const reached = adaptation(state);
    return { reached, error: golfer.carryOver * felt - reached };
  }
  const reached = golfer.carryOver * felt + adaptation(state);
  return { reached, error: golfer.change - reached };
}
