import type { DemoPose } from "@overcue/client-capture/demo-motion/demo-pose";
import { along } from "@overcue/shared-geometry/vector";
import type { Colour } from "../colour.ts";
import { between, type Material, type Piece } from "./piece.ts";

/** How the invented golfer is dressed. */
export interface Dress {
  readonly skin: Colour;
  readonly shirt: Colour;
  readonly sleeves: "short" | "long";
  readonly trousers: Colour;
  readonly legs: "short" | "long";
  readonly shoes: Colour;
  readonly hair: Colour;
  readonly cap: Colour | null;
  readonly glove: Colour | null;
}

/** The golfer's body as round pieces, always the same number in the same order for one dress. */
export function bodyPieces(pose: DemoPose, dress: Dress): readonly Piece[] {
  const { body, face } = pose;
  const skin: Material = { make: "soft", colour: dress.skin, weave: 0.06 };
  const shirt: Material = { make: "soft", colour: dress.shirt, weave: 0.2 };
  const trousers: Material = { make: "soft", colour: dress.trousers, weave: 0.2 };
  const shoes: Material = { make: "soft", colour: dress.shoes, weave: 0.1 };
  const hair: Material = { make: "soft", colour: dress.hair, weave: 0.3 };
  const waist = between(body.pelvis, body.chest, 0.3);
  const pieces: Piece[] = [
    { a: body.leadHip, b: body.trailHip, radiusA: 0.112, radiusB: 0.112, material: trousers },
    { a: body.pelvis, b: waist, radiusA: 0.135, radiusB: 0.13, material: trousers },
    { a: waist, b: body.chest, radiusA: 0.133, radiusB: 0.15, material: shirt },
    { a: body.chest, b: body.neck, radiusA: 0.14, radiusB: 0.07, material: shirt },
    { a: body.leadShoulder, b: body.trailShoulder, radiusA: 0.08, radiusB: 0.08, material: shirt },
    { a: body.neck, b: body.head, radiusA: 0.055, radiusB: 0.055, material: skin },
  ];
  const crown = along(body.head, { x: 0, y: 0, z: 1 }, 0.045);
  const back = along(crown, face, -0.03);
  pieces.push(
    { a: along(body.head, { x: 0, y: 0, z: 1 }, -0.03), b: crown, radiusA: 0.075, radiusB: 0.085, material: skin },
    { a: along(body.head, face, -0.035), b: back, radiusA: 0.085, radiusB: 0.092, material: hair },
  );
  if (dress.cap) {
    const cap: Material = { make: "soft", colour: dress.cap, weave: 0.06 };
    pieces.push(
      { a: crown, b: along(back, { x: 0, y: 0, z: 1 }, 0.02), radiusA: 0.096, radiusB: 0.098, material: cap },
      { a: along(crown, face, 0.08), b: along(crown, face, 0.15), radiusA: 0.045, radiusB: 0.03, material: cap },
    );
  }
  for (const side of ["lead", "trail"] as const) {
    const shoulder = body[`${side}Shoulder`];
    const elbow = body[`${side}Elbow`];
    const wrist = body[`${side}Wrist`];
    const hand = body[`${side}Hand`];
    const long = dress.sleeves === "long";
    const cuff = between(shoulder, elbow, long ? 1 : 0.68);
    const glove: Material = side === "lead" && dress.glove ? { make: "soft", colour: dress.glove, weave: 0.06 } : skin;
    pieces.push(
      { a: shoulder, b: cuff, radiusA: 0.07, radiusB: 0.06, material: shirt },
      {
        a: cuff,
        b: elbow,
        radiusA: long ? 0.058 : 0.048,
        radiusB: long ? 0.052 : 0.042,
        material: long ? shirt : skin,
      },
      {
        a: elbow,
        b: wrist,
        radiusA: long ? 0.05 : 0.043,
        radiusB: long ? 0.037 : 0.028,
        material: long ? shirt : skin,
      },
      { a: between(elbow, wrist, 0.93), b: hand, radiusA: 0.03, radiusB: 0.042, material: glove },
    );
    const hip = body[`${side}Hip`];
    const knee = body[`${side}Knee`];
    const ankle = body[`${side}Ankle`];
    const heel = body[`${side}Heel`];
    const toe = body[`${side}Toe`];
    const bare = dress.legs === "short";
    const hem = between(hip, knee, 0.86);
    pieces.push(
      { a: hip, b: hem, radiusA: 0.098, radiusB: bare ? 0.09 : 0.072, material: trousers },
      {
        a: hem,
        b: knee,
        radiusA: bare ? 0.06 : 0.072,
        radiusB: bare ? 0.055 : 0.068,
        material: bare ? skin : trousers,
      },
      {
        a: knee,
        b: ankle,
        radiusA: bare ? 0.056 : 0.067,
        radiusB: bare ? 0.036 : 0.058,
        material: bare ? skin : trousers,
      },
      {
        a: ankle,
        b: along(between(heel, toe, 0.3), { x: 0, y: 0, z: 1 }, 0.04),
        radiusA: 0.042,
        radiusB: 0.04,
        material: shoes,
      },
      {
        a: along(heel, { x: 0, y: 0, z: 1 }, 0.04),
        b: along(between(heel, toe, 0.88), { x: 0, y: 0, z: 1 }, 0.035),
        radiusA: 0.042,
        radiusB: 0.036,
        material: shoes,
      },
    );
  }
  return pieces;
}
