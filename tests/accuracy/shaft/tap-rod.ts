import { learnRodColour } from "@overcue/client-capture/shaft/learn-rod-colour";
import type { RodColour } from "@overcue/client-capture/shaft/rod-likeness";
import { imagePoint } from "@overcue/shared-geometry/point";
import type { Film } from "../../scenes/film.ts";
import { gaussian, namedRandom } from "../../scenes/random.ts";
import { renderScene } from "../../scenes/render-scene.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";

/** How far a finger is off the rod each way, one standard deviation, picture heights. */
const fingerOff = 0.004;
/** Where on the rod a person taps: a third of the way from the hands to the head. */
const alongShaft = 0.35;
/** One that is told that nothing was learned taps again, and then goes on without. */
const taps = 3;

/** What the phone learns of the rod's colour before the rep: from a tap on the scene's first picture, null where nothing was learned in all of them. The same settings and seed give the same tap. */
export function tapRod(settings: SceneSettings, seed: number, film?: Film): RodColour | null {
  const random = namedRandom(seed, `${settings.name} tap`);
  const first = renderScene(settings, seed, film).next();
  if (first.done === true || first.value.truth === null) return null;
  const { picture, truth } = first.value;
  const { gripInPicture: grip, headInPicture: head } = truth;
  for (let tap = 0; tap < taps; tap++) {
    const colour = learnRodColour(
      picture,
      imagePoint(
        grip.x + alongShaft * (head.x - grip.x) + fingerOff * picture.height * gaussian(random),
        grip.y + alongShaft * (head.y - grip.y) + fingerOff * picture.height * gaussian(random),
      ),
    );
    if (colour !== null) return colour;
  }
  return null;
}
