import { project } from "./camera-project.ts";
import type { Camera } from "./camera.ts";
import { pixels, radians, type Metres } from "./units.ts";
import { worldPoint, type Point } from "./point.ts";
import { multiply, rotate, rotationFromVector } from "./rotation.ts";
import type { StationLine, StationSettings } from "./station.ts";
import type { StickEnd, StickInImage } from "./stick-in-image.ts";
import type { Direction } from "./world-shaft.ts";

/** Radius of a stick, metres: its axis lies this high. Diameter 8 mm, from memory. */
const stickRadius = 0.004;

/** A ball's middle lies this high, metres: its diameter is 42.67 mm or little more (Equipment Rules of R&A and USGA, part 4). */
const ballRadius = 0.02135;

/** The ball line's stick begins this far beyond the ball, metres: a hand's breadth, so that the ball has room. Proposed here. */
export const ballToStick = 0.12;

/** How exactly a station is laid, one sd each. Larger: trusts the picture more and the tape measure less. */
export interface LayingSpread {
  /** The ball line's stick along the target line, against a hand's breadth beyond the ball, metres. */
  readonly ballStickAlong: number;
  /** The other sticks' middles along the target line, against the ball, metres. */
  readonly otherStickAlong: number;
  /** A stick's middle across, against the stated distance, metres. */
  readonly across: number;
  /** A stick's turn on the ground against the target line, radians. */
  readonly turn: number;
}

/** Laid with a tape measure and care: common practice, no source. */
export const usualLaying: LayingSpread = { ballStickAlong: 0.03, otherStickAlong: 0.25, across: 0.005, turn: 0.005 };

/** What else is known of the camera, each softly. */
export interface StationPriors {
  readonly focal: { readonly focal: number; readonly relativeSd: number };
  /** Straight down in the camera's axes (x right, y down, z forward), from the phone's motion sensor. */
  readonly gravity: { readonly down: Direction; readonly sd: number } | null;
  /** The ball's middle where it was marked in the picture: ties the sticks to the ball along the target line. */
  readonly ball: { readonly at: Point<"image">; readonly sd: number } | null;
  readonly laying: LayingSpread;
}

/** Parameters: camera x, y, z (m), turn x, y, z about the camera's axes (rad), log focal; then along, across, turn of each stick. */
export const cameraParameters = 7;
export const stickParameters = 3;

/** Steps of the numeric derivative, by parameter. */
export function stepsFor(sticks: number): number[] {
  const steps = [1e-5, 1e-5, 1e-5, 1e-6, 1e-6, 1e-6, 1e-6];
  for (let stick = 0; stick < sticks; stick++) steps.push(1e-5, 1e-5, 1e-6);
  return steps;
}

/** A camera moved by the first seven parameters. Turns are about the camera's own axes. */
export function moveCamera(base: Camera, parameters: readonly number[]): Camera {
  const [x = 0, y = 0, z = 0, turnX = 0, turnY = 0, turnZ = 0, logFocal = 0] = parameters;
  return {
    ...base,
    position: worldPoint(base.position.x + x, base.position.y + y, base.position.z + z),
    rotation: multiply(rotationFromVector({ x: turnX, y: turnY, z: turnZ }), base.rotation),
    focal: pixels(base.focal * Math.exp(logFocal)),
  };
}

/** The stated distance of a line from the ball line. */
export function lineDistance(line: StationLine, settings: StationSettings): number {
  if (line === "ball-line") return 0;
  return line === "toe-line" ? settings.toeLine : settings.heelLine;
}

/** Where a stick's middle lies along the target line when it is laid as it should. */
export function middleAlong(line: StationLine, stickLength: Metres): number {
  return line === "ball-line" ? ballToStick + stickLength / 2 : 0;
}

/** The ends of a stick's axis, near one first, laid `along`, `across` and `turn` off its stated place. */
export function stickEnds(
  line: StationLine,
  settings: StationSettings,
  [along, across, turn]: readonly [number, number, number],
): { near: Point<"world">; far: Point<"world"> } {
  const x = middleAlong(line, settings.stickLength) + along;
  const y = lineDistance(line, settings) + across;
  const halfX = (settings.stickLength / 2) * Math.cos(turn);
  const halfY = (settings.stickLength / 2) * Math.sin(turn);
  return { near: worldPoint(x - halfX, y - halfY, stickRadius), far: worldPoint(x + halfX, y + halfY, stickRadius) };
}

/** Residual in place of one that has none, because the guess put the stick behind the lens. */
const nowhere = 1e3;

/** Four residuals a stick (near across, near along, far across, far along), each in its own sds; 0 along where it does not end. */
export function stickResiduals(
  camera: Camera,
  stick: StickInImage,
  settings: StationSettings,
  laid: readonly [number, number, number],
): number[] {
  const ends = stickEnds(stick.line, settings, laid);
  const near = project(camera, ends.near);
  const far = project(camera, ends.far);
  if (!near || !far) return [nowhere, nowhere, nowhere, nowhere];
  const length = Math.hypot(far.x - near.x, far.y - near.y) || 1;
  const ux = (far.x - near.x) / length;
  const uy = (far.y - near.y) / length;
  const off = (end: StickEnd, from: Point<"image">): [number, number] => {
    const dx = end.at.x - from.x;
    const dy = end.at.y - from.y;
    return [(dy * ux - dx * uy) / end.acrossSd, end.isEnd ? (dx * ux + dy * uy) / end.alongSd : 0];
  };
  return [...off(stick.near, near), ...off(stick.far, far)];
}

/** Every residual of a guess: sticks and ball first (measured), then the priors. Pictures and camera are a right-handed golfer's. */
export function stationResiduals(
  base: Camera,
  parameters: readonly number[],
  sticks: readonly StickInImage[],
  settings: StationSettings,
  priors: StationPriors,
): number[] {
  const camera = moveCamera(base, parameters);
  const measured: number[] = [];
  const prior: number[] = [];
  for (const [index, stick] of sticks.entries()) {
    const laid = laidAt(parameters, index);
    measured.push(...stickResiduals(camera, stick, settings, laid));
    const { ballStickAlong, otherStickAlong, across, turn } = priors.laying;
    const alongSd = stick.line === "ball-line" ? ballStickAlong : otherStickAlong;
    prior.push(laid[0] / alongSd, laid[1] / across, laid[2] / turn);
  }
  if (priors.ball) {
    const ball = project(camera, worldPoint(0, 0, ballRadius));
    measured.push(
      ball ? (priors.ball.at.x - ball.x) / priors.ball.sd : nowhere,
      ball ? (priors.ball.at.y - ball.y) / priors.ball.sd : nowhere,
    );
  }
  prior.push(Math.log(camera.focal / priors.focal.focal) / priors.focal.relativeSd);
  if (priors.gravity) {
    const down = rotate(camera.rotation, { x: 0, y: 0, z: -1 });
    const { down: sensed, sd } = priors.gravity;
    prior.push((down.x - sensed.x) / sd, (down.y - sensed.y) / sd, (down.z - sensed.z) / sd);
  }
  return [...measured, ...prior];
}

/** Along, across and turn of one stick among the parameters. */
export function laidAt(parameters: readonly number[], stick: number): [number, number, number] {
  const first = cameraParameters + stickParameters * stick;
  return [parameters[first] ?? 0, parameters[first + 1] ?? 0, radians(parameters[first + 2] ?? 0)];
}
