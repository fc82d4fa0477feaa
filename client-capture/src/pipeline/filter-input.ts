import type { Camera } from "@overcue/shared-geometry/camera";
import type { FilterInput } from "@overcue/shared-geometry/filter-shaft";
import { gripToHead } from "@overcue/shared-geometry/grip-convention";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { observeShaft } from "@overcue/shared-geometry/lift-observation";
import { imagePoint } from "@overcue/shared-geometry/point";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { metres, pixels, radians } from "@overcue/shared-geometry/units";
import type { BodyInWorld } from "./body-in-world.ts";
import { soledHead } from "./soled-head.ts";

/**
 * The head end is found by where a thin line stops, a few centimetres up or down the club and much the same from picture to picture: what the tracker says of
 * one picture is doubled, for the filter takes pictures as independent.
 */
const headSdFactor = 2;
/** What lasts of the head's error beside it: a misjudged depth makes the whole club look longer or shorter, by this share of its length in the picture. */
const headLasts = 0.12;
/**
 * A line is placed no better than this across it, pixels at the grip and at its far end: shading, bends and a neighbouring edge pull it alike in all
 * pictures. A short line turns the more by it.
 */
const leastAcross = 1;
/** A thin line ends where the head begins, so far before the club's end, metres. Common practice, no source; heads differ by about as much. */
const lineEndsBefore = 0.02;
/** How well a soled club's head is placed along the shaft, as a share of the shaft's length: that of 15 degrees of lean. */
const soledShare = 0.034;

/** What one picture says of the shaft, and what is known beside it. */
export interface Sighting {
  readonly shaft: ShaftInImage;
  readonly body: BodyInWorld | null;
  /** Whether the club stands still with no rep under way: at the ball, then, if it reaches the ground. */
  readonly resting: boolean;
}

function withLeastSpread(shaft: Extract<ShaftInImage, { status: "tracked" }>): typeof shaft {
  const { grip, head, sd, offsetSd } = shaft;
  const reach = head === null ? Number.POSITIVE_INFINITY : Math.hypot(head.x - grip.x, head.y - grip.y);
  return {
    ...shaft,
    offsetSd: pixels(Math.hypot(offsetSd, leastAcross)),
    sd: radians(Math.hypot(sd, leastAcross / 2 / Math.max(reach, leastAcross))),
  };
}

/** One picture as the filter takes it; unseen where there is no shaft or no depth to place it at. */
export function filterInput(
  { shaft: told, body, resting }: Sighting,
  camera: Camera,
  settings: StationSettings,
): FilterInput {
  if (told.status !== "tracked" || body === null) return { t: told.t, seen: null };
  const shaft = withLeastSpread(told);
  const { value, sd } = body.handsX;
  const depth = { kind: "along-target-line", x: metres(value), sd: metres(sd) } as const;
  const soled = resting ? soledHead(shaft, value, camera, settings) : null;
  if (soled !== null) {
    const reach = Math.hypot(soled.x - shaft.grip.x, soled.y - shaft.grip.y);
    return { t: shaft.t, seen: observeShaft({ ...shaft, head: soled, headSd: pixels(soledShare * reach) }, depth) };
  }
  return { t: shaft.t, seen: observeShaft({ ...shaft, ...clubsEnd(shaft, settings) }, depth) };
}

/** Where the club's end is in the picture, and how well it is known along the shaft, by where the line that is seen of it ends. */
function clubsEnd(
  { grip, head, headSd }: Extract<ShaftInImage, { status: "tracked" }>,
  settings: StationSettings,
): Pick<ShaftInImage & { status: "tracked" }, "head" | "headSd"> {
  if (head === null || headSd === null) return { head: null, headSd: null };
  const [dx, dy] = [head.x - grip.x, head.y - grip.y];
  const length = gripToHead(settings);
  const longer = length / (length - lineEndsBefore);
  return {
    head: imagePoint(grip.x + longer * dx, grip.y + longer * dy),
    headSd: pixels(Math.hypot(headSdFactor * headSd, headLasts * Math.hypot(dx, dy))),
  };
}
