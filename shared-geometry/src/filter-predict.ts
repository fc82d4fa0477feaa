import { at, errorCount, type Pace, type ShaftMotion } from "./filter-motion.ts";
import { carryCovariance, type Transition } from "./filter-transition.ts";
import { worldPoint } from "./point.ts";
import { rotate, rotationFromVector } from "./rotation.ts";
import { paceSince, unrestAt } from "./swing-pace.ts";
import { milliseconds, secondsFromMilliseconds, type Milliseconds } from "./units.ts";
import { along, normalise, scale, type Vector } from "./vector.ts";

export interface Prediction {
  readonly motion: ShaftMotion;
  readonly transition: Transition;
}

/**
 * The motion at a later time: hands at constant velocity, shaft at constant angular velocity, both disturbed by accelerations that grow with the
 * pace: as it is known, or as the past tells. A time that is not later leaves the motion as it is.
 */
export function predictMotion(motion: ShaftMotion, t: Milliseconds, knownPace: Pace | null = null): Prediction {
  const seconds = Math.max(0, secondsFromMilliseconds(milliseconds(t - motion.t)));
  const rotation = rotationFromVector(scale(motion.turn, seconds));
  const transition: Transition = { seconds, rotation };
  const toHead = normalise(rotate(rotation, motion.toHead)) ?? motion.toHead;
  const place = along(motion.grip, motion.velocity, seconds);
  const carried = carryCovariance(motion.covariance, transition);
  const pace = knownPace ?? paceSince(motion, seconds);
  const unrest = unrestAt(pace);
  addWhiteAcceleration(carried, at.grip, at.velocity, unrest.hands, { x: 0, y: 0, z: 0 }, seconds);
  addWhiteAcceleration(carried, at.direction, at.turn, unrest.turn, toHead, seconds);
  return {
    transition,
    motion: {
      ...motion,
      t: milliseconds(Math.max(t, motion.t)),
      grip: worldPoint(place.x, place.y, place.z),
      toHead,
      pace,
      covariance: carried,
    },
  };
}

/**
 * What white acceleration of a density, in every direction but `except`, adds to a place and its rate
 * (Bar-Shalom, Li and Kirubarajan 2001, 6.2.2).
 */
function addWhiteAcceleration(
  covariance: Float64Array,
  place: number,
  rate: number,
  density: number,
  except: Vector,
  seconds: number,
): void {
  const axes = [except.x, except.y, except.z];
  const add = (row: number, column: number, by: number): void => {
    const index = row * errorCount + column;
    covariance[index] = (covariance[index] ?? 0) + by;
  };
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const q = density * ((i === j ? 1 : 0) - (axes[i] ?? 0) * (axes[j] ?? 0));
      add(place + i, place + j, (q * seconds ** 3) / 3);
      add(place + i, rate + j, (q * seconds ** 2) / 2);
      add(rate + i, place + j, (q * seconds ** 2) / 2);
      add(rate + i, rate + j, q * seconds);
    }
  }
}
