import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { usualGripAlongSd } from "@overcue/shared-geometry/lift-observation";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { Handed } from "@overcue/shared-geometry/station";
import type { Body } from "./body.ts";
import { handsInPicture } from "./hands-in-picture.ts";
import { momentsAbout, nextMoment, weightsBetween } from "./through-moments.ts";

interface HandsMoment {
  readonly t: number;
  readonly at: Point<"image">;
}

/**
 * Finished pictures' shafts with their grip where the hands were along the shaft's own line: on a smooth way through the poses before and after the picture, each at the time of the picture
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
    next = nextMoment(moments, next, shaft.t);
    const about = momentsAbout(moments, next);
    if (shaft.status !== "tracked" || about === null) return shaft;
    const weights = weightsBetween(shaft.t, about);
    const sum = (of: (at: Point<"image">) => number): number =>
      about.reduce((total, moment, at) => total + (weights[at] ?? 0) * (moment === undefined ? 0 : of(moment.at)), 0);
    return {
      ...shaft,
      grip: alongLine(
        shaft,
        imagePoint(
          sum(({ x }) => x),
          sum(({ y }) => y),
        ),
      ),
    };
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
