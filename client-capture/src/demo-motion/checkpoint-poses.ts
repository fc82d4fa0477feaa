import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { DemoGolfer, DemoPlaces } from "./demo-golfer-settings.ts";
import { blendPoses } from "./blend-poses.ts";
import { addressPose } from "./address-pose.ts";
import type { KeyPose } from "./key-pose.ts";
import { poseFromKey } from "./pose-from-key.ts";
import { planeFromDirection } from "./swing-plane.ts";

/** The postures that a swing passes, each solved so that it is its checkpoint exactly and its place on the ground is the one set. */
export interface CheckpointPoses {
  readonly address: KeyPose;
  /** On the way to the takeaway: hands and club move off together. */
  readonly early: KeyPose;
  readonly takeaway: KeyPose;
  readonly shaftLevelBack: KeyPose;
  readonly armLevelBack: KeyPose;
  readonly top: KeyPose;
  readonly armLevelDown: KeyPose;
  readonly shaftLevelDown: KeyPose;
  readonly impact: KeyPose;
  readonly shaftLevelThrough: KeyPose;
  readonly armLevelThrough: KeyPose;
  readonly finish: KeyPose;
}

export interface HandsShift {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

const quarter = Math.PI / 2;

/** Grip places are for a golfer of 1.78 m with his hands 0.38 m from the ball line at address; they scale and shift with both. */
export function checkpointPoses(golfer: DemoGolfer, places: DemoPlaces, shift: HandsShift): CheckpointPoses {
  const address = addressPose(golfer);
  const size = golfer.height / 1.78;
  const apart = address.gripY - 0.385;
  const at = (x: number, y: number, z: number): Pick<KeyPose, "gripX" | "gripY" | "gripZ"> => ({
    gripX: x * size + shift.x,
    gripY: y + apart + shift.y,
    gripZ: z * size + shift.z,
  });
  const pelvisX = (by: number): number => address.pelvisX + by;
  const reach = gripToHead(golfer.station);

  const takeawayBody = { ...address, shoulderTurn: 0.45, hipTurn: 0.12, pelvisX: pelvisX(-0.01) };
  const takeaway = withHeadOver(
    atTrailThigh({ ...takeawayBody, ...at(-0.16, 0.395, 0.735) }, golfer),
    places.headAtTakeaway,
    -0.5,
    reach,
    quarter,
  );

  const early = {
    ...blendPoses(address, takeaway, 0.3),
    gripX: 0.58 * address.gripX + 0.42 * takeaway.gripX,
    gripZ: address.gripZ + 0.004,
  };

  const shaftLevelBack = withHeadOver(
    { ...address, shoulderTurn: 0.75, hipTurn: 0.28, pelvisX: pelvisX(-0.015), ...at(-0.28, 0.41, 0.81) },
    places.headAtShaftLevelBack,
    0,
    reach,
    quarter,
  );
  const armLevelBack = atArmLevel(
    { ...address, shoulderTurn: 1.15, hipTurn: 0.48, pelvisX: pelvisX(-0.02), ...at(-0.52, 0.49, 1.22) },
    places.buttBack,
    -0.42,
    golfer,
  );
  const top = pointing(
    {
      ...address,
      shoulderTurn: 1.56,
      hipTurn: 0.75,
      pelvisX: pelvisX(-0.02),
      sideBend: 0.02,
      ...at(-0.26, 0.82, 1.64),
    },
    { x: 0.965, y: 0.06, z: 0.255 },
    3 * quarter,
  );
  const armLevelDown = atArmLevel(
    {
      ...address,
      shoulderTurn: 0.88,
      hipTurn: 0.12,
      pelvisX: pelvisX(0.04),
      sideBend: 0.12,
      trailHeelLift: 0.005,
      ...at(-0.42, 0.46, 1.22),
    },
    places.buttDown,
    -0.22,
    golfer,
  );
  const shaftLevelDown = withHeadOver(
    {
      ...address,
      shoulderTurn: 0.4,
      hipTurn: -0.22,
      pelvisX: pelvisX(0.06),
      sideBend: 0.2,
      trailHeelLift: 0.015,
      ...at(-0.2, 0.39, 0.84),
    },
    places.headAtShaftLevelDown,
    0,
    reach,
    quarter,
  );
  const impact = atBall(
    { ...address, shoulderTurn: -0.3, hipTurn: -0.6, pelvisX: pelvisX(0.08), sideBend: 0.28, trailHeelLift: 0.04 },
    address,
    reach,
  );
  const shaftLevelThrough = pointing(
    {
      ...address,
      shoulderTurn: -0.9,
      hipTurn: -0.95,
      pelvisX: pelvisX(0.09),
      sideBend: 0.24,
      tilt: 0.55,
      trailHeelLift: 0.09,
      ...at(0.34, 0.42, 0.86),
    },
    { x: 0.98, y: -0.2, z: 0 },
    -quarter,
  );
  const armLevelThrough = pointing(
    {
      ...address,
      shoulderTurn: -1.4,
      hipTurn: -1.25,
      pelvisX: pelvisX(0.1),
      sideBend: 0.18,
      tilt: 0.42,
      trailHeelLift: 0.15,
      faceYaw: -0.5,
      ...at(0.47, 0.55, 1.25),
    },
    { x: 0.4, y: 0.38, z: 0.83 },
    -1.7 * quarter,
  );
  const finish = pointing(
    {
      ...address,
      shoulderTurn: -1.9,
      hipTurn: -1.45,
      pelvisX: pelvisX(0.12),
      pelvisY: address.pelvisY - 0.04,
      pelvisZ: address.pelvisZ + 0.03 * size,
      sideBend: 0.08,
      tilt: 0.12,
      trailHeelLift: 0.22,
      faceYaw: -1.6,
      faceLift: 0.3,
      ...at(0.0, 1.0, 1.61),
    },
    { x: -0.8, y: 0.46, z: -0.38 },
    -3 * quarter,
  );
  return {
    address,
    early,
    takeaway,
    shaftLevelBack,
    armLevelBack,
    top,
    armLevelDown,
    shaftLevelDown,
    impact,
    shaftLevelThrough,
    armLevelThrough,
    finish,
  };
}

function pointing(pose: KeyPose, towards: HandsShift, nearPhi: number): KeyPose {
  const length = Math.hypot(towards.x, towards.y, towards.z);
  const unit = { x: towards.x / length, y: towards.y / length, z: towards.z / length };
  return { ...pose, ...planeFromDirection(unit, nearPhi) };
}

/** The head dropped onto the ground lies at `headY`; the shaft's sine of elevation is `rise`; it points away from the target. */
function withHeadOver(pose: KeyPose, headY: number, rise: number, reach: number, nearPhi: number): KeyPose {
  const y = (headY - pose.gripY) / reach;
  const rest = 1 - y * y - rise * rise;
  if (!(rest > 0)) throw new RangeError("demo golfer: the head cannot lie that far from the hands");
  return pointing(pose, { x: -Math.sqrt(rest), y, z: rise }, nearPhi);
}

/** Hands level with the middle of the trail thigh, seen across the target line. */
function atTrailThigh(pose: KeyPose, golfer: DemoGolfer): KeyPose {
  const { body } = poseFromKey(pose, golfer, true);
  return { ...pose, gripX: (body.trailHip.x + body.trailKnee.x) / 2 };
}

/**
 * Lead hand exactly as high as the lead shoulder, and the butt's line meeting the ground at `buttY`. Hand height, shoulder (which gives way
 * to a far hand) and shaft depend on one another: repeated until they agree to a nanometre.
 */
function atArmLevel(pose: KeyPose, buttY: number, along: number, golfer: DemoGolfer): KeyPose {
  let solved = pose;
  for (let round = 0; round < 60; round++) {
    const slope = (solved.gripY - buttY) / solved.gripZ;
    const rise = Math.sqrt((1 - along * along) / (1 + slope * slope));
    solved = pointing(solved, { x: along, y: slope * rise, z: rise }, 1.7 * quarter);
    const { body } = poseFromKey(solved, golfer, true);
    solved = { ...solved, gripZ: solved.gripZ + body.leadShoulder.z - body.leadHand.z };
  }
  return solved;
}

/** The club head back where it stood at address, the hands a little ahead of it. */
function atBall(pose: KeyPose, address: KeyPose, reach: number): KeyPose {
  const head = { x: -0.025, y: 0 };
  const gripX = address.gripX + 0.06;
  const gripY = address.gripY + 0.012;
  const gripZ = Math.sqrt(reach * reach - (gripX - head.x) ** 2 - (gripY - head.y) ** 2);
  return pointing({ ...pose, gripX, gripY, gripZ }, { x: head.x - gripX, y: head.y - gripY, z: -gripZ }, 0);
}
