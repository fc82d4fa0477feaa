import type { DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import { imagePoint } from "@overcue/shared-geometry/point";
import { hosel } from "../../scenes/golfer/club-pieces.ts";
import type { SceneFrame } from "../../scenes/render-scene.ts";
import type { Fact } from "./tally.ts";

/**
 * A shaft counts as findable where at least 0.35 of it shows and that is at least 1/20 of the picture's height long: not end-on, not
 * behind the body, not out of the picture. Only findable pictures count for the share tracked; every claim counts for its error.
 */
export function factOf(frame: SceneFrame): Fact {
  return {
    angle: frame.truth?.angleInPicture ?? null,
    line: frame.truth && lineOf(frame.truth),
    findable: frame.truth !== null && frame.visible >= 0.35 && frame.visiblePixels >= frame.picture.height / 20,
  };
}

/** Over so short a way as a club's neck distances along the shaft look as they are, but for the scale. */
function lineOf({ grip, head, gripInPicture, headInPicture }: DemoTruth): Fact["line"] {
  const share = hosel / Math.hypot(head.x - grip.x, head.y - grip.y, head.z - grip.z);
  const neck = imagePoint(
    headInPicture.x + share * (gripInPicture.x - headInPicture.x),
    headInPicture.y + share * (gripInPicture.y - headInPicture.y),
  );
  return { grip: gripInPicture, neck, head: headInPicture };
}
