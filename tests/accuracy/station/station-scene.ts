import type { Picture } from "@overcue/client-capture/picture/picture";
import type { Camera } from "@overcue/shared-geometry/camera";
import { stickEnds, usualLaying } from "@overcue/shared-geometry/station-model";
import type { StationLine, StationSettings } from "@overcue/shared-geometry/station";
import { sceneOf, type ConditionName } from "../../scenes/conditions.ts";
import { namedRandom, type Random } from "../../scenes/random.ts";
import { renderScene } from "../../scenes/render-scene.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";

/** Where the golfer is: a few steps down the line, as while the phone is set up, or over the sticks with the club soled. */
export type Whereabouts = "stepped away" | "at address";

/** Sticks just where they were said to be, or off as a tape measure leaves them: the spread that the solver is told. */
export type Laid = "exactly" | "by hand";

export interface StationScene {
  readonly picture: Picture;
  readonly camera: Camera;
  readonly settings: StationSettings;
  /** The true ends of its sticks, metres. */
  readonly ends: readonly ({ readonly line: StationLine } & ReturnType<typeof stickEnds>)[];
}

/** Six strides down the line, about to turn round. */
const awayMs = 5800;

/** One rendered picture of a condition with a station in it. The same condition, seed and case give the same bytes. */
export function stationScene(name: ConditionName, seed: number, where: Whereabouts, laid: Laid): StationScene {
  const scene = sceneOf(name, seed);
  const settings = scene.plan.golfer.station;
  const random = namedRandom(seed, `laying ${name} ${where} ${laid}`);
  const ends = settings.sticksPresent.map((line) => ({
    line,
    ...stickEnds(line, settings, layingOf(line === "ball-line", laid, random)),
  }));
  const extraBars = ends.map(({ near, far }) => {
    return { from: near, to: far, radius: 0.004, colour: scene.stickColour, cover: 1 };
  });
  const golfer = { ...scene.plan.golfer, station: { ...settings, sticksPresent: [] } };
  const away = [
    { do: "still", seconds: 0.5 },
    { do: "distraction", what: "walk-away-and-back" },
  ] as const;
  const fromMs = where === "stepped away" ? awayMs : 0;
  const changed: SceneSettings = {
    ...scene,
    plan: { ...scene.plan, golfer, items: where === "stepped away" ? away : scene.plan.items },
    extraBars: [...scene.extraBars, ...extraBars],
    others: [],
    swayPixels: 0,
    fromMs,
    toMs: fromMs + 1500 / scene.framesPerSecond,
  };
  const [frame] = renderScene(changed, seed);
  if (!frame) throw new Error("stationScene: nothing was rendered");
  return { picture: frame.picture, camera: scene.camera, settings, ends };
}

function layingOf(isBallLine: boolean, laid: Laid, random: Random): [number, number, number] {
  const { ballStickAlong, across, turn } = usualLaying;
  const along = (isBallLine ? ballStickAlong : 0.1) * normal(random);
  // The others lie anywhere along their line: nobody measures that.
  if (laid === "exactly") return [isBallLine ? 0 : along, 0, 0];
  return [along, across * normal(random), turn * normal(random)];
}

/** Mean 0, sd 1: twelve even draws less six. */
function normal(random: Random): number {
  let sum = -6;
  for (let draw = 0; draw < 12; draw++) sum += random();
  return sum;
}
