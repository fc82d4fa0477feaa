import { gripFromButt, gripToHead } from "@overcue/shared-geometry/grip-convention";
import { worldPoint, type Point } from "@overcue/shared-geometry/point";
import { add, along, scale, type Vector } from "@overcue/shared-geometry/vector";
import { bodyMeasures } from "./body-measures.ts";
import type { DemoGolfer } from "./demo-golfer-settings.ts";
import type { DemoPose } from "./demo-pose.ts";
import type { KeyPose } from "./key-pose.ts";
import { placeArm } from "./place-arm.ts";
import { placeFoot, placeLeg } from "./place-leg.ts";
import { placeTorso } from "./place-torso.ts";
import { stance } from "./stance.ts";
import { directionFromPlane } from "./swing-plane.ts";

/** From the middle of both hands to each hand's middle along the shaft. */
export const handFromGrip = 0.045;

const mix = (from: Vector, to: Vector, share: number): Vector => add(scale(from, 1 - share), scale(to, share));

/** The whole golfer of one posture: forward kinematics for the trunk, two-bone joints for limbs that end on club and ground. */
export function poseFromKey(key: KeyPose, golfer: DemoGolfer, club: boolean): DemoPose {
  const measures = bodyMeasures(golfer.height);
  const feet = stance(golfer, measures);
  const torso = placeTorso(key, measures);
  const grip = { x: key.gripX, y: key.gripY, z: key.gripZ };
  const toHead = directionFromPlane(key.phi, key.psi);
  const leadFree = { x: key.leadFreeX, y: key.leadFreeY, z: key.leadFreeZ };
  const trailFree = { x: key.trailFreeX, y: key.trailFreeY, z: key.trailFreeZ };
  const leadHand = mix(leadFree, along(grip, toHead, -handFromGrip), key.leadOn);
  const trailHand = mix(trailFree, along(grip, toHead, handFromGrip), key.trailOn);
  const lead = placeArm(torso.leadShoulder, leadHand, elbowTowards(torso.front, 1), measures);
  const trail = placeArm(torso.trailShoulder, trailHand, elbowTowards(torso.front, -1), measures);

  const turn = { cos: Math.cos(key.rootYaw), sin: Math.sin(key.rootYaw) };
  const turned = (v: Vector): Vector => ({
    x: turn.cos * v.x - turn.sin * v.y,
    y: turn.sin * v.x + turn.cos * v.y,
    z: v.z,
  });
  const stand = { x: feet.middle.x, y: feet.middle.y, z: 0 };
  const moved = (v: Vector): Point<"world"> => {
    const away = turned({ x: v.x - stand.x, y: v.y - stand.y, z: v.z });
    return worldPoint(stand.x + key.rootX + away.x, stand.y + key.rootY + away.y, away.z);
  };

  const leadYaw = feet.leadYaw + key.leadFootYaw;
  const trailYaw = feet.trailYaw + key.trailFootYaw;
  const leadToe = add(feet.leadToe, { x: key.leadFootX, y: key.leadFootY, z: key.leadFootZ });
  const trailToe = add(feet.trailToe, { x: key.trailFootX, y: key.trailFootY, z: key.trailFootZ });
  const leadHip = moved(torso.leadHip);
  const trailHip = moved(torso.trailHip);
  const leadLeg = placeLeg(leadHip, placeFoot(leadToe, leadYaw, 0, measures), leadYaw, measures);
  const trailLeg = placeLeg(trailHip, placeFoot(trailToe, trailYaw, key.trailHeelLift, measures), trailYaw, measures);

  const butt = along(grip, toHead, -1 * gripFromButt);
  const rod = golfer.station.rodBeyondButt;
  return {
    body: {
      pelvis: moved(torso.pelvis),
      chest: moved(torso.chest),
      neck: moved(torso.neck),
      head: moved(torso.head),
      leadShoulder: moved(lead.shoulder),
      trailShoulder: moved(trail.shoulder),
      leadElbow: moved(lead.elbow),
      trailElbow: moved(trail.elbow),
      leadWrist: moved(lead.wrist),
      trailWrist: moved(trail.wrist),
      leadHand: moved(leadHand),
      trailHand: moved(trailHand),
      leadHip,
      trailHip,
      leadKnee: leadLeg.knee,
      trailKnee: trailLeg.knee,
      leadAnkle: leadLeg.ankle,
      trailAnkle: trailLeg.ankle,
      leadHeel: leadLeg.heel,
      trailHeel: trailLeg.heel,
      leadToe: leadLeg.toe,
      trailToe: trailLeg.toe,
    },
    face: turned(torso.face),
    club: club
      ? {
          butt: moved(butt),
          grip: moved(grip),
          head: moved(along(grip, toHead, gripToHead(golfer.station))),
          toHead: turned(toHead),
          rodEnd: rod > 0 ? moved(along(butt, toHead, -1 * rod)) : null,
        }
      : null,
  };
}

/** Elbows hang: down, and a little outwards and away from the chest. */
const elbowTowards = (front: Vector, side: 1 | -1): Vector => ({
  x: side * 0.35 - 0.2 * front.x,
  y: 0.25 - 0.2 * front.y,
  z: -1,
});
