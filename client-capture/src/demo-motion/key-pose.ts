/**
 * One posture of the golfer as a flat list of numbers, so that a motion is a path through such lists. Metres and radians, in the golfer's
 * own frame: the world frame while `rootX`, `rootY`, `rootYaw` are 0.
 *
 * The club's direction is told in the frame of the swing plane (see swing-plane.ts): `phi` round the plane, 0 at address, positive going
 * back; `psi` out of it, positive flatter.
 */
export interface KeyPose {
  readonly phi: number;
  readonly psi: number;
  readonly gripX: number;
  readonly gripY: number;
  readonly gripZ: number;
  /** Turns about the spine and about the vertical, positive away from the target. */
  readonly shoulderTurn: number;
  readonly hipTurn: number;
  /** Spine's lean towards the ball line, and away from the target. */
  readonly tilt: number;
  readonly sideBend: number;
  readonly pelvisX: number;
  readonly pelvisY: number;
  readonly pelvisZ: number;
  /** Turn of the face about the spine, positive away from the target, and its nod upwards. */
  readonly faceYaw: number;
  readonly faceLift: number;
  readonly trailHeelLift: number;
  /** Where the golfer stands, away from the address: steps in metres and a turn about the vertical, anticlockwise from above. */
  readonly rootX: number;
  readonly rootY: number;
  readonly rootYaw: number;
  /** 1: the hand is on the grip, 0: at its free place. */
  readonly leadOn: number;
  readonly trailOn: number;
  readonly leadFreeX: number;
  readonly leadFreeY: number;
  readonly leadFreeZ: number;
  readonly trailFreeX: number;
  readonly trailFreeY: number;
  readonly trailFreeZ: number;
  /** Where each foot has been put, away from the address, in the world, and how it points. */
  readonly leadFootX: number;
  readonly leadFootY: number;
  readonly leadFootZ: number;
  readonly trailFootX: number;
  readonly trailFootY: number;
  readonly trailFootZ: number;
  readonly leadFootYaw: number;
  readonly trailFootYaw: number;
}

export type Channel = keyof KeyPose;

/** These go from key to key and rest at each, so that a planted foot stays planted. */
export const restingChannels: ReadonlySet<Channel> = new Set<Channel>([
  "leadOn",
  "trailOn",
  "leadFreeX",
  "leadFreeY",
  "leadFreeZ",
  "trailFreeX",
  "trailFreeY",
  "trailFreeZ",
  "leadFootX",
  "leadFootY",
  "leadFootZ",
  "trailFootX",
  "trailFootY",
  "trailFootZ",
  "leadFootYaw",
  "trailFootYaw",
]);
