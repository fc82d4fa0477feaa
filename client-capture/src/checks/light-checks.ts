import type { StageId } from "@overcue/shared-geometry/wire/practice";
import type { SetUpCheck } from "./set-up-check.ts";
import { isEnoughFor, reachOfExposure, reachOfRate, reachWords } from "./speed-reach.ts";

export interface LightSeen {
  /** Mean brightness of the picture, 0 to 255; null before the first one. */
  readonly brightness: number | null;
  /** As the camera tells it; null where it does not. */
  readonly exposureMs: number | null;
  readonly framesPerSecond: number;
  readonly hasTorch: boolean;
}

/** A picture darker than this on the whole hides a shaft in its noise; 0 to 255. From trials, no source. */
export const darkBelow = 45;

const moreLight = (hasTorch: boolean): string =>
  hasTorch
    ? "Switch this phone's light on, or give the place more light."
    : "Give the place more light, or turn the golfer towards it.";

/** Whether the picture is bright enough, and how fast a swing its exposure still shows as a line. */
export function lightCheck(
  { brightness, exposureMs, framesPerSecond, hasTorch }: LightSeen,
  stage: StageId | null,
): SetUpCheck {
  const id = "light";
  const todo = moreLight(hasTorch);
  if (brightness === null || framesPerSecond === 0)
    return { id, state: "unknown", words: "Light not measured yet", todo };
  if (brightness < darkBelow) return { id, state: "problem", words: "Picture too dark to find a shaft", todo };
  if (exposureMs !== null) {
    const reach = reachOfExposure(exposureMs);
    const enough = isEnoughFor(reach, stage);
    const words = `Exposure ${exposureMs.toFixed(1)} ms: ${reachWords[reach]}`;
    return { id, state: enough ? "ok" : "problem", words, todo: enough ? "" : `${todo} Until then swing slower.` };
  }
  // A shutter cannot be open for longer than one picture takes.
  const most = 1000 / framesPerSecond;
  const sure = reachOfExposure(most);
  const words = `Bright enough; exposure not told, at most ${most.toFixed(0)} ms: ${reachWords[sure]} for sure`;
  return {
    id,
    state: isEnoughFor(sure, stage) ? "ok" : "unknown",
    words: sure === "none" ? "Bright enough; exposure not told by this phone" : words,
    todo: "This phone does not tell its exposure: where a moving shaft smears, swing slower or find more light.",
  };
}

/** How fast a swing the pictures a second can follow. */
export function rateCheck(framesPerSecond: number, stage: StageId | null): SetUpCheck {
  const id = "frame-rate";
  if (framesPerSecond === 0) return { id, state: "unknown", words: "Pictures a second not counted yet", todo: "" };
  const reach = reachOfRate(framesPerSecond);
  const enough = isEnoughFor(reach, stage);
  return {
    id,
    state: enough ? "ok" : "problem",
    words: `${Math.round(framesPerSecond)} pictures a second: ${reachWords[reach]}`,
    todo: enough ? "" : "Close other programs on the phone and give the place more light; until then swing slower.",
  };
}
