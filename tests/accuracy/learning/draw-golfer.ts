import { between, namedRandom, type Random } from "../../scenes/random.ts";

/** A simulated golfer. Metres. Every range is our assumption, no source. */
export interface SimulatedGolfer {
  /** From habit to wanted, signed. */
  readonly change: number;
  /** Share of a cue that carries over. */
  readonly carryOver: number;
  /** Scatter from rep to rep, one standard deviation. */
  readonly scatter: number;
  /** The measurement's error, one standard deviation, which the measurement knows of itself. */
  readonly measurementSd: number;
  /** Share of the slow state kept over a night. */
  readonly keptOvernight: number;
  /** This golfer's own stream of chance, the same in every arm. */
  readonly chance: () => Random;
}

export function drawGolfer(seed: number): SimulatedGolfer {
  const random = namedRandom(seed, "golfer");
  const side = random() < 0.5 ? -1 : 1;
  return {
    change: side * between(random, 0.2, 0.6),
    carryOver: between(random, 0.1, 0.9),
    scatter: between(random, 0.03, 0.08),
    measurementSd: between(random, 0.015, 0.035),
    keptOvernight: between(random, 0.5, 0.9),
    chance: () => namedRandom(seed, "reps"),
  };
}
