import type { Camera } from "@overcue/shared-geometry/camera";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import type { SwingSample } from "../swing/swing-sample.ts";
import type { BodyInWorld } from "./body-in-world.ts";
import { clubInPicture } from "./club-in-picture.ts";

/** This moment as the swing clock wants it. `camera` is null where it is only assumed. */
export function swingSample(
  t: Milliseconds,
  seen: ShaftInImage,
  shaft: ShaftInWorld | null,
  body: BodyInWorld | null,
  alone: ShaftInWorld | null = null,
  camera: Camera | null = null,
): SwingSample {
  return {
    t,
    shaft,
    alone,
    tracked: seen.status === "tracked",
    hands: body?.hands ?? null,
    leadShoulderZ: body?.leadShoulderZ ?? null,
    trailThighX: body?.trailThighX ?? null,
    inPicture: camera === null ? null : clubInPicture(seen, camera),
    feet: body?.feet ?? null,
  };
}
