import { gaussian, type Random } from "../random.ts";
import type { SightErrors } from "./sight-errors.ts";

/** Named errors, each of standard deviation 1: a part that wanders slowly and a part that is new with every picture. */
export interface Wander {
  value(name: string): number;
  readonly slow: Map<string, number>;
  readonly whole: Map<string, number>;
}

export function startWander(
  names: readonly string[],
  errors: Pick<SightErrors, "memoryMs" | "freshShare">,
  random: Random,
): Wander {
  const slow = new Map(names.map((name) => [name, gaussian(random)]));
  const whole = new Map<string, number>();
  const state = { slow, whole, value: (name: string) => whole.get(name) ?? 0 };
  wander(state, errors.memoryMs, errors, random);
  return state;
}

/** Carries all errors on by so many milliseconds (a first-order Gauss-Markov process, and white noise beside it). */
export function wander(
  state: Wander,
  stepMs: number,
  errors: Pick<SightErrors, "memoryMs" | "freshShare">,
  random: Random,
): void {
  const keep = Math.exp(-stepMs / errors.memoryMs);
  for (const [name, value] of state.slow) {
    const next = keep * value + Math.sqrt(1 - keep * keep) * gaussian(random);
    state.slow.set(name, next);
    state.whole.set(name, Math.sqrt(1 - errors.freshShare) * next + Math.sqrt(errors.freshShare) * gaussian(random));
  }
}
