import { makeCanvas, wholeOf, type Canvas } from "../canvas.ts";
import { scaleColour, timesColour } from "../colour.ts";
import { lightOn } from "../light.ts";
import { makeFractalTile, type Tile } from "../noise-tile.ts";
import { paintLimb } from "../paint/paint-limb.ts";
import { paintStroke } from "../paint/paint-stroke.ts";
import { stillSweep } from "../golfer/sweep-pieces.ts";
import type { Random } from "../random.ts";
import { pixelsPerMetre, type View } from "../view.ts";
import type { SceneLight } from "./make-light.ts";
import { paintFar } from "./paint-far.ts";
import { paintGround } from "./paint-ground.ts";
import { paintWall } from "./paint-wall.ts";
import { cutBackdrop, type BackdropChoice } from "./photographs.ts";
import type { Bar, Place } from "./place.ts";

const lit = new Float64Array(3);

/** All that keeps still, painted once: surroundings, ground, mat, bars from far to near, the ball. */
export function paintPlace(
  width: number,
  height: number,
  view: View,
  place: Place,
  bars: readonly Bar[],
  ball: boolean,
  sceneLight: SceneLight,
  random: Random,
): Canvas {
  const canvas = makeCanvas(width, height);
  const tile = makeFractalTile(random, 256, 64, 0.62);
  const turf = makeFractalTile(random, 256, 8, 0.7);
  const { light } = sceneLight;
  if (place.behind.kind === "photograph") {
    paintPhotograph(canvas, place.behind.choice);
  } else {
    paintBehind(canvas, view, place.behind, place.ground.farEnd, sceneLight, tile);
    paintGround(canvas, view, place.ground, place.mat, light, turf);
  }
  const whole = wholeOf(canvas);
  const shown = bars
    .map((bar) => ({ bar, sweep: stillSweep(bar.from, bar.to, bar.radius, view) }))
    .sort((a, b) => b.sweep.depthA + b.sweep.depthB - a.sweep.depthA - a.sweep.depthB);
  for (const { bar, sweep } of shown) {
    lightOn(light, 0, -0.5, -0.87, lit);
    const matt = timesColour(bar.colour, [lit[0] ?? 0, lit[1] ?? 0, lit[2] ?? 0]);
    const across = [0.62, 0.95, 1.12, 1, 0.72].map((gain) => scaleColour(matt, gain));
    paintStroke(canvas, { kind: "stroke", sweep, across, cover: bar.cover, opaque: false }, whole);
  }
  if (ball) {
    const sweep = stillSweep({ x: 0, y: 0, z: 0.0214 }, { x: 0, y: 0.0001, z: 0.0214 }, 0.0214, view);
    const metresPerPixel = 1 / pixelsPerMetre(view, sweep.depthA);
    const texture = { tile, strength: 0, cells: 1, offset: 0 };
    paintLimb(canvas, { kind: "limb", sweep, colour: [0.86, 0.86, 0.84], texture, metresPerPixel }, light, whole);
  }
  canvas.depth.fill(Infinity);
  return canvas;
}

/** A white wall of a photograph is somewhat darker than a white sheet in the scene's light. */
const photographGain = 0.85;

function paintPhotograph(canvas: Canvas, choice: BackdropChoice): void {
  const { rgb } = cutBackdrop(choice, canvas.width, canvas.height);
  for (let i = 0; i < rgb.length; i++) canvas.rgb[i] = photographGain * (rgb[i] as number);
}

function paintBehind(
  canvas: Canvas,
  view: View,
  behind: Exclude<Place["behind"], { readonly kind: "photograph" }>,
  farEnd: number,
  sceneLight: SceneLight,
  tile: Tile,
): void {
  if (behind.kind === "wall") {
    paintWall(canvas, view, behind.wall, sceneLight.light, tile);
    return;
  }
  const { far } = behind;
  const [r, g, b] = sceneLight.far;
  const tinted = {
    ...far,
    skyTop: timesColour(far.skyTop, [r, g, b]),
    skyLow: timesColour(far.skyLow, [r, g, b]),
    trees: timesColour(far.trees, [Math.min(1, r), Math.min(1, g), Math.min(1, b)]),
    treesLit: timesColour(far.treesLit, [Math.min(1, r), Math.min(1, g), Math.min(1, b)]),
  };
  paintFar(canvas, view, tinted, farEnd, tile);
}
