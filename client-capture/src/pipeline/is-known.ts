import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";

/** A direction known no better than this, radians (one sd), points nowhere. */
const widest = 0.6;

/** Whether a shaft's direction is known well enough to go on with. */
export function isKnown({ toHead, covariance }: ShaftInWorld): boolean {
  const level = 1 - toHead.z * toHead.z;
  const spread = Math.sqrt(Math.max(0, covariance[18] ?? 0) * level + Math.max(0, covariance[24] ?? 0));
  return spread < widest;
}
