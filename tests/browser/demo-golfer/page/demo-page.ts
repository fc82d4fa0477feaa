import {
  evenPlaces,
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { DemoPlan, DemoRepPlan } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoCamera } from "@overcue/client-capture/demo-motion/demo-camera";
import type { DemoCheckpoint, DemoTruth } from "@overcue/client-capture/demo-motion/demo-truth";
import { DemoGolferSource } from "@overcue/client-capture/frames/demo-golfer/demo-golfer-source";
import { seededRandom } from "@overcue/client-capture/frames/demo-golfer/seeded-random";
import type { Camera } from "@overcue/shared-geometry/camera";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import { metres, pixels, radians } from "@overcue/shared-geometry/units";
import type { DemoShow } from "../demo-show.ts";
import { clipRecorder } from "./clip-recorder.ts";
import { i420FromRgba } from "./i420-from-rgba.ts";
import { post } from "./post.ts";

export interface ShownFrame {
  readonly captureTime: number;
  readonly index: number;
  readonly truth: DemoTruth | null;
  readonly width: number;
  readonly height: number;
}

/** What a test can ask of this page. */
export interface DemoPage {
  open(show: DemoShow): { readonly camera: Camera; readonly checkpoints: readonly DemoCheckpoint[] };
  /** The next picture, kept for `pixels`; null at the end. */
  next(): Promise<ShownFrame | null>;
  /** The picture kept, RGBA row-major, in base64. */
  pixels(): string;
  /** Sends the picture kept, as planar 4:2:0, to the page's server. */
  send(): Promise<void>;
  /**
   * The rest of the show as an MP4 coded by the browser, sent to the page's server; how many pictures, and how they are coded. `times`: stretched to so many
   * times the rate, each picture shown as often.
   */
  record(times: number): Promise<{ readonly frames: number; readonly codec: string }>;
  checkpoints(): readonly DemoCheckpoint[];
}

let source: DemoGolferSource | null = null;
let kept: { readonly data: Uint8ClampedArray; readonly width: number; readonly height: number } | null = null;

const page: DemoPage = {
  open(show) {
    const camera = cameraOf(show);
    const plans = [planOf(show)];
    source?.close();
    source = new DemoGolferSource({
      camera,
      framesPerSecond: show.framesPerSecond,
      pace: null,
      rodColour: show.rodColour,
      random: seededRandom(show.seed),
      nextPlan: () => plans.shift() ?? null,
    });
    return { camera, checkpoints: source.checkpoints };
  },
  async next() {
    const frame = await source?.next();
    if (!frame) return null;
    const { image, captureTime, index, truth } = frame;
    const width = "displayWidth" in image ? image.displayWidth : image.width;
    const height = "displayHeight" in image ? image.displayHeight : image.height;
    const context = readingContext(width, height);
    context.drawImage(image, 0, 0);
    image.close();
    kept = { data: context.getImageData(0, 0, width, height).data, width, height };
    return { captureTime, index, truth, width, height };
  },
  pixels() {
    const bytes = kept?.data ?? new Uint8ClampedArray();
    let text = "";
    // A call takes so many arguments at most, and a character at a time takes a second a picture.
    for (let at = 0; at < bytes.length; at += 32_768) text += String.fromCharCode(...bytes.subarray(at, at + 32_768));
    return btoa(text);
  },
  async send() {
    if (!kept) throw new Error("no picture yet");
    await post(i420FromRgba(kept.data, kept.width, kept.height));
  },
  async record(times) {
    let recorder: Awaited<ReturnType<typeof clipRecorder>> | null = null;
    let frames = 0;
    for (let frame = await source?.next(); frame; frame = await source?.next()) {
      const { image, captureTime } = frame;
      recorder ??= await clipRecorder(image);
      const step = 1 / ((source?.info.nominalFramesPerSecond ?? 30) * times);
      for (let time = 0; time < times; time++) {
        await recorder.add(image, captureTime / 1000 + time * step);
        frames++;
      }
      image.close();
    }
    if (recorder === null) throw new Error("the show has no picture");
    await post(await recorder.finish());
    return { frames, codec: recorder.codec };
  },
  checkpoints: () => source?.checkpoints ?? [],
};

function cameraOf({ camera, width, height, handed }: DemoShow): Camera {
  if (camera === "demo") return demoCamera(width, height, handed);
  const usual = defaultCamera(pixels(width), pixels(height), handed);
  if (camera === "default") return usual;
  const { x, y, z } = usual.position;
  const bumped = camera === "bumped";
  const position = bumped ? worldPoint(x, y + 0.02, z) : worldPoint(-2.4, y, z);
  const [left, up] = bumped ? [1.5, 0] : [0, 12];
  const tangent = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
  return lookAtCamera({
    position,
    target: worldPoint(position.x + 1, position.y + tangent(left), position.z + tangent(up)),
    roll: radians(0),
    focal: usual.focal,
    width: usual.width,
    height: usual.height,
    handed,
  });
}

let reading: OffscreenCanvasRenderingContext2D | null = null;

function readingContext(width: number, height: number): OffscreenCanvasRenderingContext2D {
  if (reading?.canvas.width !== width || reading.canvas.height !== height) {
    reading = new OffscreenCanvas(width, height).getContext("2d", { willReadFrequently: true });
  }
  if (!reading) throw new Error("no 2D canvas");
  return reading;
}

function planOf(show: DemoShow): DemoPlan {
  const golfer = {
    ...usualGolfer,
    station: { ...usualGolfer.station, handed: show.handed, rodBeyondButt: metres(show.rodBeyondButt) },
  };
  const rep: DemoRepPlan = {
    do: "rep",
    kind: show.kind,
    places: show.flatToSteep === 0 ? evenPlaces : placesOf(show.flatToSteep),
    tempo: show.tempo === "slow" ? slowTempo : tourTempo,
  };
  const held = (index: number): DemoRepPlan =>
    show.holdSeconds === 0
      ? rep
      : { ...rep, hold: { at: index % 2 === 0 ? "arm-level-back" : "arm-level-down", seconds: show.holdSeconds } };
  const reps = Array.from({ length: show.reps }, (_, index) => [held(index), { do: "still", seconds: 1.5 } as const]);
  const walk = show.walksFirst ? [{ do: "distraction", what: "walk-away-and-back" } as const] : [];
  return { golfer, club: show.club, ball: show.ball, items: [{ do: "still", seconds: 1.5 }, ...walk, ...reps.flat()] };
}

declare global {
  var demoPage: DemoPage | undefined;
}
globalThis.demoPage = page;
