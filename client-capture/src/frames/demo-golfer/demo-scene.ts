import {
  DirectionalLight,
  Group,
  HemisphereLight,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  NotEqualStencilFunc,
  ReplaceStencilOp,
  Scene,
  SphereGeometry,
  WebGLRenderer,
} from "three";
import type { Camera } from "@overcue/shared-geometry/camera";
import type { DemoGolfer } from "../../demo-motion/demo-golfer-settings.ts";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";
import { ClubModel } from "./club-model.ts";
import { demoColours, type RodColour } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { lawn } from "./lawn.ts";
import { Mannequin } from "./mannequin.ts";
import { MergedFigure } from "./merged-figure.ts";
import { paintBackdrop } from "./paint-backdrop.ts";
import { sunlight, windowAround, type WindowSize } from "./picture-window.ts";
import { sceneCamera, type SceneCamera } from "./scene-camera.ts";

const ballRadius = 0.02135;

export interface DemoSceneOptions {
  readonly golfer: DemoGolfer;
  readonly camera: Camera;
  readonly rodColour: RodColour;
  /** Large enough for golfer, club and shadow in any one picture of the motion: only so much is drawn anew. */
  readonly window: WindowSize;
  /** In [0, 1): grows grass and trees. */
  readonly random: () => number;
}

/**
 * The demonstrated golfer on a lawn, seen by a virtual phone: `draw` a posture, then take the canvas's picture. What never moves is drawn
 * once; golfer, club and shadow are drawn over it in their window.
 */
export class DemoScene {
  readonly canvas: OffscreenCanvas;
  readonly #context: OffscreenCanvasRenderingContext2D;
  readonly #backdrop: OffscreenCanvas;
  #window: WindowSize;
  readonly #seenBy: Camera;
  readonly #drawn: OffscreenCanvas;
  readonly #renderer: WebGLRenderer;
  readonly #scene = new Scene();
  readonly #camera: SceneCamera;
  readonly #mannequin: Mannequin;
  readonly #club: ClubModel;
  readonly #ball = drawPart(new SphereGeometry(ballRadius, 8, 6), demoColours.ball);
  readonly #figure: MergedFigure;
  /** What the canvas shows: a golfer who stands still is not drawn again. */
  #onCanvas = "";

  /** @throws Error with a sentence for the user where the browser gives no WebGL. */
  constructor(options: DemoSceneOptions) {
    const { golfer, camera, window } = options;
    this.canvas = new OffscreenCanvas(camera.width, camera.height);
    this.#context = flatContext(this.canvas);
    this.#backdrop = drawBackdrop(options);
    this.#window = window;
    this.#seenBy = camera;
    this.#drawn = new OffscreenCanvas(window.width, window.height);
    this.#renderer = newRenderer(this.#drawn);
    this.#camera = sceneCamera(camera);
    const { mirror } = this.#camera;

    this.#mannequin = new Mannequin(golfer.height);
    this.#club = new ClubModel(golfer.station, options.rodColour);
    this.#ball.position.set(0, 0, ballRadius);
    const posed = new Group();
    posed.add(this.#mannequin.group, this.#club.group, this.#ball);
    this.#figure = new MergedFigure(posed);
    const shadow = new Mesh(this.#figure.mesh.geometry, shadowMaterial());
    shadow.matrixAutoUpdate = false;
    shadow.matrix.copy(flattened);
    shadow.frustumCulled = false;
    shadow.renderOrder = -1;
    const root = new Group();
    root.scale.y = mirror;
    root.add(shadow, this.#figure.mesh);
    this.#scene.add(root, ...lights(mirror));
  }

  /** Draws one picture; `ball` says whether it still lies there. Copy the canvas, never transfer it: the next picture may be the same one. */
  draw(pose: DemoPose, ball: boolean): void {
    const drawing = JSON.stringify([pose, ball]);
    if (drawing === this.#onCanvas) return;
    this.#onCanvas = drawing;
    this.#mannequin.pose(pose);
    this.#club.pose(pose);
    this.#ball.visible = ball;
    this.#figure.update();
    const window = windowAround(pose, this.#seenBy, this.#window);
    this.#camera.look(window);
    this.#renderer.render(this.#scene, this.#camera.drawn);
    this.#context.drawImage(this.#backdrop, 0, 0);
    this.#context.drawImage(this.#drawn, window.left, window.top);
  }

  /** Draws the place with its sticks, and nobody and no ball there. */
  drawEmpty(): void {
    this.#onCanvas = "";
    this.#context.drawImage(this.#backdrop, 0, 0);
  }

  /** For another motion: the window grows where it must. */
  makeRoom(window: WindowSize): void {
    const width = Math.max(window.width, this.#window.width);
    const height = Math.max(window.height, this.#window.height);
    if (width === this.#window.width && height === this.#window.height) return;
    this.#window = { width, height };
    this.#renderer.setSize(width, height, false);
  }

  close(): void {
    this.#renderer.dispose();
    this.#renderer.forceContextLoss();
  }
}

/** All that never moves, drawn at twice the size and scaled down for smooth edges. */
function drawBackdrop({ camera, golfer, random }: DemoSceneOptions): OffscreenCanvas {
  const { width, height } = camera;
  const picture = new OffscreenCanvas(width, height);
  const context = flatContext(picture);
  paintBackdrop(context, camera, random);
  const seen = sceneCamera(camera);
  seen.look({ left: 0, top: 0, width, height });
  const ground = new Group();
  ground.scale.y = seen.mirror;
  ground.add(lawn(golfer.station, random));
  const scene = new Scene();
  scene.add(ground, ...lights(seen.mirror));
  const large = new OffscreenCanvas(2 * width, 2 * height);
  const renderer = newRenderer(large);
  renderer.render(scene, seen.drawn);
  context.imageSmoothingQuality = "high";
  context.drawImage(large, 0, 0, width, height);
  renderer.dispose();
  renderer.forceContextLoss();
  return picture;
}

function flatContext(canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const context = canvas.getContext("2d");
  if (!context) throw new Error("The demo golfer cannot be drawn: this browser gives no 2D canvas.");
  return context;
}

/** Every point slides along the sunlight down to just above the ground. */
const flattened = new Matrix4().set(
  ...[1, 0, -sunlight.x / sunlight.z, 0],
  ...[0, 1, -sunlight.y / sunlight.z, 0],
  ...[0, 0, 0, 0.001],
  ...[0, 0, 0, 1],
);

function newRenderer(canvas: OffscreenCanvas): WebGLRenderer {
  try {
    return new WebGLRenderer({ canvas, antialias: true, alpha: true, stencil: true });
  } catch (cause) {
    throw new Error("The demo golfer cannot be drawn: this browser gives no WebGL. Use the camera or a clip instead.", {
      cause,
    });
  }
}

function lights(mirror: 1 | -1): readonly [HemisphereLight, DirectionalLight] {
  const sky = new HemisphereLight(0xeaf2ff, 0x8a9a6c, 2.0);
  sky.position.set(0, 0, 1);
  const sun = new DirectionalLight(0xfff4e0, 2.2);
  sun.position.set(-sunlight.x - 0.35, -mirror * sunlight.y, -sunlight.z);
  return [sky, sun];
}

/** Darkens the ground once, however many parts throw their shadow on the same spot. */
function shadowMaterial(): MeshBasicMaterial {
  return new MeshBasicMaterial({
    color: 0x0c1a08,
    transparent: true,
    opacity: 0.42,
    depthTest: false,
    depthWrite: false,
    stencilWrite: true,
    stencilRef: 1,
    stencilFunc: NotEqualStencilFunc,
    stencilZPass: ReplaceStencilOp,
  });
}
