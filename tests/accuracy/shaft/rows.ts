import type { Effort } from "@overcue/client-capture/shaft/track-shaft";
import { conditionNames, sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";

/** The same scenes as of "full 30 1/120", looked at as a clip is. */
const clipRow = "clip 30 1/120";
/** The same scenes as of "slow+rod", with the rod's colour learned from a tap before the rep. */
const tappedRow = "rod tapped";

/** The scenes of "flow 60" as a clip that was coded before it came here. */
const codedRow = "clip H.264";

/** A row of the table: a condition filmed live, with the rod tapped before it or not, or a clip that is gone over where there is time. */
export type RowName = ConditionName | typeof clipRow | typeof codedRow | typeof tappedRow;

/** How many scenes, each of its own seed, make a row: at least a thousand pictures, for half a percent of fewer is no figure; more in clutter, where one line beside the hands can decide a scene. */
const scenesInRow: Readonly<Record<RowName, number>> = {
  "slow+rod": 4,
  "slow+bare": 3,
  "flow 60": 4,
  "full 60 1/500": 8,
  "full 30 1/120": 15,
  "full 240 1/1000": 2,
  dusk: 6,
  night: 6,
  backlight: 6,
  "clutter+decoy": 12,
  photographs: 12,
  "indoor flicker": 6,
  "small 240x384": 6,
  "1080x1920": 6,
  "end-on": 6,
  "left-handed": 4,
  "empty hands": 6,
  [tappedRow]: 4,
  [clipRow]: 15,
  [codedRow]: 4,
};

/** Of how many of a row's scenes one is judged where there are ten minutes. */
const fewerBy = 3;

/** The seeds of a row's scenes, all of them or so many as ten minutes are enough for. */
export const seedsInRow = (name: RowName, all: boolean): readonly number[] =>
  Array.from({ length: Math.ceil(scenesInRow[name] / (all ? 1 : fewerBy)) }, (_, index) => index + 1);

export const rowNames: readonly RowName[] = [...conditionNames, tappedRow, clipRow, codedRow];

export const isTapped = (name: RowName): boolean => name === tappedRow;

const isClip = (name: RowName): name is typeof clipRow | typeof codedRow => name === clipRow || name === codedRow;

export const effortOf = (name: RowName): Effort => (isClip(name) ? "leisure" : "live");

/** Bits a second that a clip takes as it is sent on by message: common practice, no source; null where nothing is coded. */
export const bitsOf = (name: RowName): number | null => (name === codedRow ? 2_000_000 : null);

/** Whose scenes a row shows. */
export const conditionOf = (name: RowName): ConditionName =>
  name === tappedRow ? "slow+rod" : name === clipRow ? "full 30 1/120" : name === codedRow ? "flow 60" : name;

/** The scene of a row that this seed draws. In a clip each picture waits for its own pose; poses come eight a picture here, so that the newest is hardly older. */
export function sceneOfRow(name: RowName, seed: number): SceneSettings {
  const scene = sceneOf(conditionOf(name), seed);
  if (!isClip(name)) return scene;
  return { ...scene, pose: { ...scene.pose, perSecond: 8 * scene.framesPerSecond, delayMs: 0 } };
}
