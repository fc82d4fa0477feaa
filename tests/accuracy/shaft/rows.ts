import { conditionNames, sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";

/** The same scenes as of "full 30 1/120", looked at as a clip is. */
const clipRow = "clip 30 1/120";

/** A row of the table: a condition filmed live, or a clip that is gone over where there is time. */
export type RowName = ConditionName | typeof clipRow;

/** How many scenes, each of its own seed, make a row: fast reps are short, so they get more of them; and so does clutter, where one line beside the hands can decide a scene. */
export const scenesInRow: Readonly<Record<RowName, number>> = {
  "slow+rod": 4,
  "slow+bare": 3,
  "flow 60": 3,
  "full 60 1/500": 8,
  "full 30 1/120": 8,
  "full 240 1/1000": 1,
  dusk: 3,
  night: 4,
  backlight: 4,
  "clutter+decoy": 12,
  "indoor flicker": 3,
  "small 240x384": 3,
  "1080x1920": 1,
  "end-on": 3,
  "left-handed": 4,
  "empty hands": 2,
  [clipRow]: 8,
};

export const rowNames: readonly RowName[] = [...conditionNames, clipRow];

export const effortOf = (name: RowName): "live" | "leisure" => (name === clipRow ? "leisure" : "live");

/** The scene of a row that this seed draws. In a clip each picture waits for its own pose; poses come eight a picture here, so that the newest is hardly older. */
export function sceneOfRow(name: RowName, seed: number): SceneSettings {
  if (name !== clipRow) return sceneOf(name, seed);
  const scene = sceneOf("full 30 1/120", seed);
  return { ...scene, pose: { ...scene.pose, perSecond: 8 * scene.framesPerSecond, delayMs: 0 } };
}
