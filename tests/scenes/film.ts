import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { Vector } from "@overcue/shared-geometry/vector";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { growRectangle, makeCanvas, wholeOf, type Canvas, type Rectangle } from "./canvas.ts";
import { bodyPieces } from "./golfer/body-pieces.ts";
import { bowAt } from "./golfer/bow-at.ts";
import { clubPieces } from "./golfer/club-pieces.ts";
import type { Piece } from "./golfer/piece.ts";
import { shadowSweeps } from "./golfer/shadow-sweeps.ts";
import { sweepPieces, type PiecesInTime } from "./golfer/sweep-pieces.ts";
import { makeFractalTile, makeGrainTile, type Tile } from "./noise-tile.ts";
import { boundsOf } from "./paint/bounds-of.ts";
import { paintLimb, type Limb } from "./paint/paint-limb.ts";
import { paintShadow } from "./paint/paint-shadow.ts";
import { paintStroke, type Stroke } from "./paint/paint-stroke.ts";
import type { Sweep } from "./paint/sweep.ts";
import { makeLight, type SceneLight } from "./place/make-light.ts";
import { makePlace } from "./place/make-place.ts";
import { paintPlace } from "./place/paint-place.ts";
import { stationBars } from "./place/station-bars.ts";
import { namedRandom, type Random } from "./random.ts";
import type { SceneSettings } from "./scene-settings.ts";
import { makeDarkroom, type Darkroom } from "./sensor/darkroom.ts";
import { shiftLight } from "./sensor/shift-light.ts";
import { swayAt } from "./sway-at.ts";
import { visibleShaft } from "./visible-shaft.ts";
import type { Seen, View } from "./view.ts";

/** One exposure. */
export interface Shot {
  readonly picture: Picture;
  readonly view: View;
  readonly visible: number;
  readonly visiblePixels: number;
}

/** A scene with its still part painted, ready to be shot at any moment. */
export interface Film {
  readonly motion: DemoMotion;
  shoot(t: number, index: number): Shot;
}

/** One moment of an exposure: what is painted, and the shadows that it throws. */
interface Moment {
  readonly solids: readonly (Limb | Stroke)[];
  readonly shadows: readonly Sweep[];
}

interface Set {
  readonly settings: SceneSettings;
  readonly motion: DemoMotion;
  readonly background: Canvas;
  readonly margin: number;
  readonly sceneLight: SceneLight;
  readonly cloth: Tile;
  readonly canvas: Canvas;
  readonly sum: Float32Array;
  readonly shade: Float32Array;
  readonly darkroom: Darkroom;
}

export function makeFilm(settings: SceneSettings, seed: number): Film {
  const motion = demoMotion(settings.plan);
  const { camera, sensor } = settings;
  const { width, height } = camera;
  const view: View = { camera, shiftX: 0, shiftY: 0 };
  const draw = (use: string): Random => namedRandom(seed, `${settings.name} ${use}`);
  const sceneLight = makeLight(settings.light, draw("light"), view);
  const place = makePlace(settings.place, draw("place"));
  const margin = settings.swayPixels > 0 ? Math.ceil(settings.swayPixels) + 2 : 0;
  const bars = [
    ...place.bars,
    ...stationBars(settings.plan.golfer.station, settings.stickColour),
    ...settings.extraBars,
  ];
  const wide: View = { camera, shiftX: margin, shiftY: margin };
  const paint = draw("texture");
  const background = paintPlace(
    width + 2 * margin,
    height + 2 * margin,
    wide,
    place,
    bars,
    settings.plan.ball,
    sceneLight,
    paint,
  );
  const grain = makeGrainTile(draw("grain"), 512, sensor.grainSpread);
  const set: Set = {
    settings,
    motion,
    background,
    margin,
    sceneLight,
    cloth: makeFractalTile(draw("cloth"), 128, 32, 0.55),
    canvas: makeCanvas(width, height),
    sum: new Float32Array(width * height * 3),
    shade: new Float32Array(width * height),
    darkroom: makeDarkroom(settings, grain, margin > 0 ? null : background.rgb, draw("develop")),
  };
  return { motion, shoot: (t, index) => shoot(set, t, index, seed) };
}

function shoot(set: Set, t: number, index: number, seed: number): Shot {
  const { settings, motion, canvas, sum, margin } = set;
  const { width } = canvas;
  const [shiftX, shiftY] = swayAt(t, settings.swayPixels, seed);
  const view: View = { camera: settings.camera, shiftX, shiftY };
  const moments: Moment[] = [];
  for (let part = 0; part < settings.subFrames; part++) {
    moments.push(momentAt(set, view, t + ((part + 0.5) / settings.subFrames - 0.5) * settings.exposureMs));
  }
  const within = margin > 0 ? wholeOf(canvas) : growRectangle(boundsOf(moments, canvas), 10, 16, canvas);
  const still = margin > 0 ? shiftLight(set.background, canvas, margin, shiftX, shiftY) : set.background.rgb;
  const middle = settings.subFrames >> 1;
  let seen = { visible: 0, visiblePixels: 0 };
  moments.forEach((moment, part) => {
    paintMoment(set, moment, still, within);
    if (part === middle) seen = visibleShaft(motion, view, t, settings.bowAtFullSpeed, isPaintedOver(canvas));
    addLight(canvas.rgb, sum, width, within, part === 0, 1 / settings.subFrames);
  });
  return { picture: set.darkroom.develop(sum, within, t, index), view, ...seen };
}

/** Everything that moves, as it is swept while the rows are read around the moment t. */
function momentAt(set: Set, view: View, t: number): Moment {
  const { settings, motion, sceneLight } = set;
  const half = settings.readOutMs / 2;
  const own = (when: number): readonly Piece[] => {
    const pose = motion.at(when / 1000);
    const bow = bowAt(motion, when, settings.bowAtFullSpeed);
    return [...bodyPieces(pose, settings.dress), ...clubPieces(pose, { ...settings.club, bow })];
  };
  const at = (when: number): readonly Piece[] => [
    ...own(when),
    ...settings.others.flatMap((other) => own(when - other.laterMs).map((piece) => moved(piece, other.x, other.y))),
  ];
  const middle = at(t);
  const pieces: PiecesInTime = half === 0 ? [middle, middle, middle] : [at(t - half), middle, at(t + half)];
  return {
    solids: sweepPieces(pieces, view, sceneLight.light, set.cloth),
    shadows: shadowSweeps(pieces, sceneLight.towardsSun, view),
  };
}

const moved = (piece: Piece, x: number, y: number): Piece => ({
  ...piece,
  a: { x: piece.a.x + x, y: piece.a.y + y, z: piece.a.z },
  b: { x: piece.b.x + x, y: piece.b.y + y, z: piece.b.z },
});

/** Whether something was painted clearly (4 cm) in front of a place of the shaft. */
const isPaintedOver =
  (canvas: Canvas) =>
  (_: Vector, { x, y, depth }: Seen): boolean =>
    (canvas.depth[Math.floor(y) * canvas.width + Math.floor(x)] ?? 0) < depth - 0.04;

function paintMoment(set: Set, moment: Moment, still: Float32Array, within: Rectangle): void {
  const { canvas, shade, sceneLight } = set;
  const { width, height, rgb, depth } = canvas;
  const softPixels = (sweep: Sweep): number =>
    Math.max(0.5, (sceneLight.shadowEdge * set.settings.camera.focal) / sweep.depthA);
  for (let row = within.top; row < within.bottom; row++) {
    const from = row * width + within.left;
    const to = row * width + within.right;
    rgb.set(still.subarray(from * 3, to * 3), from * 3);
    depth.fill(Infinity, from, to);
    shade.fill(0, from, to);
  }
  for (const sweep of moment.shadows) paintShadow(shade, width, height, sweep, softPixels(sweep), within);
  for (let row = within.top; row < within.bottom; row++) {
    for (let pixel = row * width + within.left; pixel < row * width + within.right; pixel++) {
      const lost = shade[pixel] ?? 0;
      if (lost === 0) continue;
      const left = 1 - lost * sceneLight.shadow;
      rgb[pixel * 3] = (rgb[pixel * 3] ?? 0) * left;
      rgb[pixel * 3 + 1] = (rgb[pixel * 3 + 1] ?? 0) * left;
      rgb[pixel * 3 + 2] = (rgb[pixel * 3 + 2] ?? 0) * left;
    }
  }
  for (const solid of moment.solids) {
    if (solid.kind === "limb") paintLimb(canvas, solid, sceneLight.light, within);
    else paintStroke(canvas, solid, within);
  }
}

function addLight(
  from: Float32Array,
  sum: Float32Array,
  width: number,
  within: Rectangle,
  first: boolean,
  share: number,
): void {
  for (let row = within.top; row < within.bottom; row++) {
    const start = (row * width + within.left) * 3;
    const end = (row * width + within.right) * 3;
    if (first) for (let at = start; at < end; at++) sum[at] = share * (from[at] ?? 0);
    else for (let at = start; at < end; at++) sum[at] = (sum[at] ?? 0) + share * (from[at] ?? 0);
  }
}
