import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { usualGripAlongSd } from "@overcue/shared-geometry/lift-observation";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { Handed } from "@overcue/shared-geometry/station";
import type { Body } from "./body.ts";
import { handsInPicture } from "./hands-in-picture.ts";

interface HandsMoment {
  readonly t: number;
  readonly at: Point<"image">;
}

/**
 * Finished pictures' shafts with their grip where the hands were along the shaft's own line: straight between the poses before and after the picture, each at the time of the picture
 * that it was about. The tracker had only those before, and fast hands are elsewhere by then. A picture before the first pose or after the last one keeps what the tracker had.
 */
export function gripsBetween(
  shafts: readonly ShaftInImage[],
  pictures: readonly { readonly body: Body | null }[],
  handed: Handed,
): readonly ShaftInImage[] {
  const moments = momentsOf(pictures, handed);
  let next = 0;
  return shafts.map((shaft) => {
    while (next < moments.length && (moments[next]?.t ?? 0) < shaft.t) next++;
    const [before, after] = [moments[next - 1], moments[next]];
    if (shaft.status !== "tracked" || before === undefined || after === undefined) return shaft;
    const share = (shaft.t - before.t) / (after.t - before.t);
    return { ...shaft, grip: alongLine(shaft, between(before.at, after.at, share)) };
  });
}

function momentsOf(pictures: readonly { readonly body: Body | null }[], handed: Handed): HandsMoment[] {
  const moments: HandsMoment[] = [];
  for (const { body } of pictures) {
    if (body === null || body.t <= (moments[moments.length - 1]?.t ?? -Infinity)) continue;
    const hands = handsInPicture(body, handed);
    if (hands !== null) moments.push({ t: body.t, at: hands.at });
  }
  return moments;
}

const between = (a: Point<"image">, b: Point<"image">, share: number): Point<"image"> =>
  imagePoint(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));

/**
 * The point of the shaft's line to which the grip belongs when hands were seen at `hands`. As far as the two disagree by no more than either is off along the shaft, the tracker's place stays, which rests on many
 * poses; beyond that it is late.
 */
function alongLine(
  { grip, angle }: Extract<ShaftInImage, { status: "tracked" }>,
  hands: Point<"image">,
): Point<"image"> {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const apart = (hands.x - grip.x) * cos + (hands.y - grip.y) * sin;
  const along = (apart * apart ** 2) / (apart ** 2 + usualGripAlongSd ** 2);
  return imagePoint(grip.x + along * cos, grip.y + along * sin);
}
