import { Matrix } from "ml-matrix";
import { at, errorCount, squareTo, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { worldPoint } from "./point.ts";
import { rotate, rotationFromVector } from "./rotation.ts";
import { secondsFromMilliseconds, milliseconds, type Milliseconds } from "./units.ts";
import { along, lengthOf, normalise, scale } from "./vector.ts";

export interface Prediction {
  readonly motion: ShaftMotion;
  /** How errors carry over, fourteen by fourteen. */
  readonly transition: Matrix;
}

/**
 * The motion at a later time: hands at constant velocity, shaft at constant angular velocity, both disturbed by accelerations that grow with speed.
 * A time that is not later leaves the motion as it is.
 */
export function predictMotion(motion: ShaftMotion, t: Milliseconds, depthSd: number): Prediction {
  const seconds = Math.max(0, secondsFromMilliseconds(milliseconds(t - motion.t)));
  const rotation = rotationFromVector(scale(motion.turn, seconds));
  const keep = Math.exp(-seconds / filterTuning.depthBiasLasts);
  const transition = Matrix.eye(errorCount);
  const turned = Matrix.from1DArray(3, 3, Array.from(rotation));
  for (let axis = 0; axis < 3; axis++) transition.set(at.grip + axis, at.velocity + axis, seconds);
  transition.setSubMatrix(turned, at.direction, at.direction);
  transition.setSubMatrix(turned, at.turn, at.turn);
  transition.setSubMatrix(Matrix.mul(turned, seconds), at.direction, at.turn);
  transition.set(at.depthBias, at.depthBias, keep);

  const toHead = normalise(rotate(rotation, motion.toHead)) ?? motion.toHead;
  const place = along(motion.grip, motion.velocity, seconds);
  const carried = transition.mmul(motion.covariance).mmul(transition.transpose());
  const { turnUnrest, turnUnrestPerRate, handUnrest, handUnrestPerSpeed, unrestLasts, depthBiasShare } = filterTuning;
  const turnNoise = unrestLasts * (turnUnrest + turnUnrestPerRate * lengthOf(motion.turn)) ** 2;
  const handNoise = unrestLasts * (handUnrest + handUnrestPerSpeed * lengthOf(motion.velocity)) ** 2;
  addWhiteAcceleration(carried, at.grip, at.velocity, Matrix.eye(3).mul(handNoise), seconds);
  addWhiteAcceleration(carried, at.direction, at.turn, squareTo(toHead).mul(turnNoise), seconds);
  const biasNoise = depthBiasShare * depthSd * depthSd * (1 - keep * keep);
  carried.set(at.depthBias, at.depthBias, carried.get(at.depthBias, at.depthBias) + biasNoise);
  return {
    transition,
    motion: {
      ...motion,
      t: milliseconds(Math.max(t, motion.t)),
      grip: worldPoint(place.x, place.y, place.z),
      toHead,
      depthBias: keep * motion.depthBias,
      covariance: carried,
    },
  };
}

/** The covariance that white acceleration of a density adds to a place and its rate (Bar-Shalom, Li and Kirubarajan 2001, 6.2.2). */
function addWhiteAcceleration(covariance: Matrix, place: number, rate: number, density: Matrix, seconds: number): void {
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      const q = density.get(i, j);
      const add = (row: number, column: number, by: number): void => {
        covariance.set(row, column, covariance.get(row, column) + q * by);
      };
      add(place + i, place + j, seconds ** 3 / 3);
      add(place + i, rate + j, seconds ** 2 / 2);
      add(rate + i, place + j, seconds ** 2 / 2);
      add(rate + i, rate + j, seconds);
    }
  }
}
