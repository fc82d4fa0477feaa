import type { DemoPose } from "@overcue/client-capture/demo-motion/demo-pose";
import { along, cross, normalise, type Vector } from "@overcue/shared-geometry/vector";
import { colourFromHex, type Colour } from "../colour.ts";
import { between, type Material, type Piece } from "./piece.ts";

/** What the golfer swings. Lengths in metres. */
export interface ClubLook {
  readonly shaft: "steel" | "graphite";
  readonly head: "iron" | "driver";
  /** White or coloured rings of tape, as distances from the butt. */
  readonly tape: readonly number[];
  readonly tapeColour: Colour;
  /** The practice rod: 4 ft long, held along the shaft, out of the butt as far as the motion says. */
  readonly rod: Colour | null;
  /** How far the tip lags behind the straight line, metres, and towards where in the world; 0 for a slow swing. */
  readonly bow: Vector;
}

/** Butt and tip diameters of a shaft are 15 and 9 mm; a grip is 27 to 20 mm thick and 27 cm long; a rod 8 mm (common practice, no source). */
const shaftRadius = { butt: 0.0075, tip: 0.0045 };
const gripRadius = { butt: 0.0135, end: 0.01 };
const gripLength = 0.27;
const rodRadius = 0.004;
const rodLength = 1.22;
/** Where the shaft ends in the head, metres before the sole. */
export const hosel = 0.05;
const segments = 5;
/** Neighbouring pieces run into each other a little, so that no lighter pixel shows at their joint. */
const overlap = 0.004;

/** The place on the bowed shaft a share of the way from butt to sole: the bow grows as the square of the way below the hands. */
export function onShaft(butt: Vector, head: Vector, bow: Vector, share: number): Vector {
  const below = Math.max(0, share - 0.15) / 0.85;
  const bent = below * below;
  const straight = between(butt, head, share);
  return { x: straight.x + bow.x * bent, y: straight.y + bow.y * bent, z: straight.z + bow.z * bent };
}

/** Grip, shaft, tape, head and rod as pieces, butt first; nothing with empty hands. */
export function clubPieces(pose: DemoPose, look: ClubLook): readonly Piece[] {
  const { club } = pose;
  if (!club) return [];
  const { butt, head, toHead } = club;
  const length = Math.hypot(head.x - butt.x, head.y - butt.y, head.z - butt.z);
  const at = (metres: number): Vector => onShaft(butt, head, look.bow, metres / length);
  const thick = (metres: number): number => shaftRadius.butt + (shaftRadius.tip - shaftRadius.butt) * (metres / length);
  const rubber: Material = { make: "rubber", colour: colourFromHex("#26282b") };
  const shaft: Material = {
    make: look.shaft,
    colour: look.shaft === "steel" ? colourFromHex("#c9ccd0") : colourFromHex("#1d1f24"),
  };
  const pieces: Piece[] = [
    { a: butt, b: at(gripLength), radiusA: gripRadius.butt, radiusB: gripRadius.end, material: rubber },
  ];
  const bare = length - hosel - gripLength;
  for (let part = 0; part < segments; part++) {
    const from = gripLength + (bare * part) / segments;
    const to = gripLength + (bare * (part + 1)) / segments;
    pieces.push({ a: at(from), b: at(to + overlap), radiusA: thick(from), radiusB: thick(to), material: shaft });
  }
  for (const mark of look.tape) {
    const radius = thick(mark) + 0.0008;
    const tape: Material = { make: "paint", colour: look.tapeColour };
    pieces.push({ a: at(mark), b: at(mark + 0.025), radiusA: radius, radiusB: radius, material: tape });
  }
  pieces.push(...headPieces(at(length - hosel), at(length), toHead, look.head));
  if (club.rodEnd && look.rod) pieces.push(...rodPieces(club.rodEnd, toHead, look.rod));
  return pieces;
}

function headPieces(neck: Vector, sole: Vector, toHead: Vector, kind: ClubLook["head"]): readonly Piece[] {
  const metal: Material = { make: "soft", colour: colourFromHex("#8d9096"), weave: 0.25 };
  const towardsToe = normalise(cross(toHead, { x: 1, y: 0, z: 0.05 })) ?? { x: 0, y: -1, z: 0 };
  const toe =
    towardsToe.z > 0 || toHead.z > -0.5 ? towardsToe : { x: -towardsToe.x, y: -towardsToe.y, z: -towardsToe.z };
  if (kind === "driver") {
    const black: Material = { make: "soft", colour: colourFromHex("#2a2c31"), weave: 0.1 };
    const middle = along(sole, toe, 0.04);
    return [
      { a: neck, b: sole, radiusA: 0.008, radiusB: 0.012, material: black },
      { a: along(sole, toe, 0.01), b: along(middle, toe, 0.03), radiusA: 0.035, radiusB: 0.045, material: black },
    ];
  }
  return [
    { a: neck, b: sole, radiusA: 0.007, radiusB: 0.009, material: metal },
    { a: sole, b: along(sole, toe, 0.065), radiusA: 0.013, radiusB: 0.024, material: metal },
  ];
}

/** The rod lies against the shaft on the side away from the fingers, a finger's breadth off. */
function rodPieces(end: Vector, toHead: Vector, colour: Colour): readonly Piece[] {
  const aside = normalise(cross(toHead, { x: 0.3, y: 0.2, z: 0.9 })) ?? { x: 0, y: 1, z: 0 };
  const from = along(end, aside, 0.012);
  const to = along(from, toHead, rodLength);
  const paint: Material = { make: "paint", colour };
  const pieces: Piece[] = [];
  for (let part = 0; part < segments; part++) {
    pieces.push({
      a: between(from, to, part / segments),
      b: between(from, to, (part + 1) / segments + overlap),
      radiusA: rodRadius,
      radiusB: rodRadius,
      material: paint,
    });
  }
  return pieces;
}
