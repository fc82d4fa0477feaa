import type { SceneFrame } from "../../scenes/render-scene.ts";
import type { Fact } from "./tally.ts";

/**
 * A shaft counts as findable where at least 0.35 of it shows and that is at least 1/20 of the picture's height long: not end-on, not
 * behind the body, not out of the picture. Only findable pictures count for the share tracked; every claim counts for its error.
 */
export function factOf(frame: SceneFrame): Fact {
  return {
    angle: frame.truth?.angleInPicture ?? null,
    line: frame.truth && { grip: frame.truth.gripInPicture, head: frame.truth.headInPicture },
    findable: frame.truth !== null && frame.visible >= 0.35 && frame.visiblePixels >= frame.picture.height / 20,
  };
}
