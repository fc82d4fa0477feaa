import type { Body } from "@overcue/client-capture/pipeline/body";
import type { DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { milliseconds, type Milliseconds } from "@overcue/shared-geometry/units";
import { makeFilm } from "./film.ts";
import { namedRandom } from "./random.ts";
import type { SceneSettings } from "./scene-settings.ts";
import { simulatePoses } from "./pose/simulate-poses.ts";
import { truthInPicture } from "./truth-in-picture.ts";
import type { View } from "./view.ts";

/** One picture of a scene with all that is known of it. */
export interface SceneFrame {
  readonly index: number;
  /** Mid-exposure of the picture's middle row. */
  readonly t: Milliseconds;
  readonly picture: Picture;
  /** The club as this picture shows it; null with empty hands. */
  readonly truth: DemoTruth | null;
  /** How much of the bare shaft (grip's end to head) can be seen: inside the picture and not behind the body, 0 to 1; 0 without one. */
  readonly visible: number;
  /** The same as a length in pixels. */
  readonly visiblePixels: number;
  /** The newest pose that had arrived when this picture was taken; it is of an earlier one. */
  readonly body: Body | null;
}

/**
 * The pictures of a scene, one after the other, each painted when it is asked for. The same settings and seed give the same bytes. `film`: of the
 * same scene, whoever watches the golfer.
 */
export function* renderScene(
  settings: SceneSettings,
  seed: number,
  film = makeFilm(settings, seed),
): Generator<SceneFrame> {
  const { motion } = film;
  const still: View = { camera: settings.camera, shiftX: 0, shiftY: 0 };
  const poses = simulatePoses(
    motion,
    still,
    settings.dress,
    settings.pose,
    settings.fromMs,
    namedRandom(seed, `${settings.name} pose`),
  );
  const step = 1000 / settings.framesPerSecond;
  const count = Math.floor((settings.toMs - settings.fromMs) / step);
  for (let index = 0; index < count; index++) {
    const t = settings.fromMs + index * step;
    const shot = film.shoot(t, index);
    yield {
      index,
      t: milliseconds(t),
      picture: shot.picture,
      truth: truthInPicture(motion, shot.view, t, settings.readOutMs, settings.bowAtFullSpeed),
      visible: shot.visible,
      visiblePixels: shot.visiblePixels,
      body: poses.answerAt(t),
    };
  }
}
