import { at, errorCount, type ShaftMotion } from "./filter-motion.ts";
import { filterTuning } from "./filter-tuning.ts";
import { turnsOfAngles } from "./turns-of-angles.ts";
import type { ShaftInWorld } from "./world-shaft.ts";

/** A motion that begins where one lift says, at rest for all that is known. The grip's place is left open: the first update tells it. */
export function startMotion(shaft: ShaftInWorld, depthSd: number): ShaftMotion {
  const { firstPlaceSd, firstSpeedSd, firstRateSd, depthBiasShare, lengthBiasSd } = filterTuning;
  const covariance = new Float64Array(errorCount * errorCount);
  const set = (row: number, column: number, value: number): void => {
    covariance[row * errorCount + column] = value;
  };
  const unit = [shaft.toHead.x, shaft.toHead.y, shaft.toHead.z];
  const turns = turnsOfAngles(shaft.toHead);
  const angles = [3, 4].map((i) => [3, 4].map((j) => shaft.covariance[5 * i + j] ?? 0));
  for (let i = 0; i < 3; i++) {
    set(at.grip + i, at.grip + i, firstPlaceSd ** 2);
    set(at.velocity + i, at.velocity + i, firstSpeedSd ** 2);
    for (let j = 0; j < 3; j++) {
      let direction = 0;
      for (const [a, one] of turns.entries()) {
        for (const [b, other] of turns.entries()) direction += (one[i] ?? 0) * (other[j] ?? 0) * (angles[a]?.[b] ?? 0);
      }
      set(at.direction + i, at.direction + j, direction);
      set(at.turn + i, at.turn + j, firstRateSd ** 2 * ((i === j ? 1 : 0) - (unit[i] ?? 0) * (unit[j] ?? 0)));
    }
  }
  set(at.depthBias, at.depthBias, depthBiasShare * depthSd ** 2);
  set(at.lengthBias, at.lengthBias, lengthBiasSd ** 2);
  return {
    t: shaft.t,
    grip: shaft.grip,
    velocity: { x: 0, y: 0, z: 0 },
    toHead: shaft.toHead,
    turn: { x: 0, y: 0, z: 0 },
    depthBias: 0,
    lengthBias: 0,
    covariance,
  };
}
