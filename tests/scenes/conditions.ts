import {
  flowTempo,
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlan,
  type DemoRepPlan,
  type DemoTempo,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import { defaultStation } from "@overcue/shared-geometry/default-station";
import { lookAtCamera } from "@overcue/shared-geometry/look-at-camera";
import { worldPoint } from "@overcue/shared-geometry/point";
import type { ClubId, Handed } from "@overcue/shared-geometry/station";
import { metres, pixels, radians, seconds } from "@overcue/shared-geometry/units";
import { colourFromHex } from "./colour.ts";
import { drawDress } from "./draw-dress.ts";
import type { LightName } from "./place/make-light.ts";
import type { Bar, PlaceName } from "./place/place.ts";
import { usualPoseErrors } from "./pose/pose-errors.ts";
import { between, namedRandom, type Random } from "./random.ts";
import type { SceneSettings } from "./scene-settings.ts";
import type { SensorSettings } from "./sensor/sensor-settings.ts";

/** What makes one condition differ from a plain one; everything else of a scene is drawn by its seed. */
interface Condition {
  readonly rep: DemoRepPlan["kind"];
  readonly tempo: DemoTempo;
  readonly rod: boolean;
  readonly size: readonly [number, number];
  readonly framesPerSecond: number;
  readonly exposureMs: number;
  readonly readOutMs: number;
  readonly places: readonly PlaceName[];
  readonly lights: readonly LightName[];
  readonly sensor: Partial<SensorSettings>;
  readonly handed: Handed;
  readonly clubs: readonly ClubId[];
  readonly emptyHands: boolean;
  readonly decoys: boolean;
  readonly others: boolean;
  readonly swayPixels: number;
  /** The camera at the height of the level shaft and on its line, so that it sees the shaft end-on. */
  readonly endOn: boolean;
  /** Metres from the ball to the camera, at least and at most. */
  readonly distance: readonly [number, number];
}

const plain: Condition = {
  rep: "rehearsal",
  tempo: slowTempo,
  rod: false,
  size: [720, 1280],
  framesPerSecond: 60,
  exposureMs: 4,
  readOutMs: 14,
  places: ["tee", "range"],
  lights: ["sun", "overcast", "shade"],
  sensor: {},
  handed: "right",
  clubs: ["7-iron", "5-iron", "driver"],
  emptyHands: false,
  decoys: false,
  others: false,
  swayPixels: 0,
  endOn: false,
  distance: [3.4, 4.6],
};

const full = { rep: "full", tempo: tourTempo } as const;

const conditions = {
  "slow+rod": { ...plain, rod: true },
  "slow+bare": plain,
  "flow 60": { ...plain, rep: "flow", tempo: flowTempo, exposureMs: 3 },
  "full 60 1/500": { ...plain, ...full, exposureMs: 2 },
  "full 30 1/120": { ...plain, ...full, framesPerSecond: 30, exposureMs: 8.3, readOutMs: 20 },
  "full 240 1/1000": { ...plain, ...full, framesPerSecond: 240, exposureMs: 1, readOutMs: 4, size: [540, 960] },
  dusk: {
    ...plain,
    framesPerSecond: 30,
    lights: ["dusk"],
    exposureMs: 14,
    sensor: { gain: 1.7, grain: 9, grainSpread: 0.25, quality: 62, blur: 0.9 },
  },
  night: {
    ...plain,
    framesPerSecond: 30,
    places: ["range"],
    lights: ["night"],
    exposureMs: 14,
    sensor: { gain: 1.5, grain: 11, grainSpread: 0.28, quality: 58, blur: 1, veil: 0.01 },
  },
  backlight: {
    ...plain,
    framesPerSecond: 30,
    rod: true,
    lights: ["backlight"],
    exposureMs: 2,
    sensor: { gain: 1.1, veil: 0.022 },
  },
  "clutter+decoy": { ...plain, framesPerSecond: 30, places: ["busy"], decoys: true, others: true, swayPixels: 1.5 },
  photographs: {
    ...plain,
    rep: "flow",
    tempo: flowTempo,
    framesPerSecond: 30,
    exposureMs: 3,
    places: ["photograph"],
    lights: ["sun", "overcast"],
  },
  "indoor flicker": {
    ...plain,
    framesPerSecond: 30,
    places: ["room", "bay"],
    lights: ["lamps"],
    exposureMs: 6,
    readOutMs: 16,
    sensor: { gain: 1.25, grain: 6, grainSpread: 0.2, mains: 50, flicker: 0.35 },
    distance: [2.6, 3.2],
  },
  "small 240x384": {
    ...plain,
    rod: true,
    size: [240, 384],
    framesPerSecond: 30,
    exposureMs: 8,
    sensor: { blur: 0.5, quality: 70 },
  },
  "1080x1920": { ...plain, size: [1080, 1920], framesPerSecond: 30 },
  "end-on": { ...plain, framesPerSecond: 30, endOn: true },
  "left-handed": { ...plain, handed: "left", rod: true, rep: "flow", tempo: flowTempo },
  "empty hands": { ...plain, emptyHands: true, framesPerSecond: 30 },
} as const satisfies Record<string, Condition>;

export type ConditionName = keyof typeof conditions;
export const conditionNames = Object.keys(conditions) as readonly ConditionName[];

/** The scene of a condition that this seed draws: who, in what, where, seen from where. One rep with still time before and after. */
export function sceneOf(name: ConditionName, seed: number): SceneSettings {
  const condition: Condition = conditions[name];
  const random = namedRandom(seed, `scene ${name}`);
  const pick = <T>(list: readonly T[], fallback: T): T => list[Math.floor(random() * list.length)] ?? fallback;
  const club = pick(condition.clubs, "7-iron");
  const light = pick(condition.lights, "sun");
  const place = pick(condition.places, "tee");
  const station = {
    ...defaultStation(club, condition.handed),
    rodBeyondButt: metres(condition.rod ? between(random, 0.45, 0.7) : 0),
  };
  const height = metres(between(random, 1.66, 1.9));
  const stretch = Math.exp(between(random, -0.12, 0.12));
  const plan = {
    golfer: { ...usualGolfer, height, station, lieDegrees: usualLie[club] + between(random, -2, 2) },
    club: !condition.emptyHands,
    ball: !condition.rod && random() < 0.6,
    items: [
      { do: "still", seconds: 0.5 },
      {
        do: "rep",
        kind: condition.rep,
        places: placesOf(between(random, -0.8, 1.2)),
        tempo: {
          backswing: seconds(condition.tempo.backswing * stretch),
          downswing: seconds(condition.tempo.downswing * stretch),
        },
      },
      { do: "still", seconds: 0.4 },
    ],
  } as const;
  const blur = condition.exposureMs > 6 ? 8 : condition.tempo === slowTempo ? 2 : 6;
  return {
    name,
    camera: drawCamera(condition, random),
    framesPerSecond: condition.framesPerSecond,
    exposureMs: condition.exposureMs,
    subFrames: condition.tempo === slowTempo && condition.exposureMs < 6 ? 1 : blur,
    readOutMs: condition.readOutMs,
    swayPixels: condition.swayPixels,
    plan,
    fromMs: 0,
    toMs: endOfFilm(plan),
    place,
    light,
    dress: drawDress(random),
    club: {
      shaft: random() < 0.6 ? "steel" : "graphite",
      head: club === "driver" ? "driver" : "iron",
      tape: random() < 0.25 ? [0.5, 0.8] : [],
      tapeColour: colourFromHex("#f4f4f4"),
      rod: condition.rod ? colourFromHex(pick(["#f4d21f", "#ff6a13", "#f5f5f2", "#3ddc5b"], "#f4d21f")) : null,
    },
    bowAtFullSpeed: 0.03,
    stickColour: colourFromHex(pick(["#f4d21f", "#ff6a13", "#f5f5f2", "#d8262c"], "#f4d21f")),
    extraBars: condition.decoys ? decoySticks(random) : [],
    others: condition.others
      ? [
          { x: between(random, 2.8, 4.2), y: between(random, -0.6, 0.5), laterMs: between(random, 200, 1500) },
          { x: between(random, 6.5, 9), y: between(random, -2, 2), laterMs: between(random, 0, 2500) },
        ]
      : [],
    sensor: {
      gain: light === "shade" ? 1.9 : 1,
      veil: 0.004,
      blur: 0.6,
      sharpen: between(random, 0.5, 1.1),
      grain: 2.2,
      grainSpread: 0.12,
      quality: Math.round(between(random, 76, 88)),
      mains: 0,
      flicker: 0,
      ...condition.sensor,
    },
    pose: { ...usualPoseErrors, perSecond: between(random, 15, 25), delayMs: between(random, 40, 75) },
  };
}

/** A little after impact: what follows is a still finish. The same for empty hands, which have no impact. */
function endOfFilm(plan: DemoPlan): number {
  const motion = demoMotion({ ...plan, club: true });
  const impact = motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact");
  return Math.min(motion.duration * 1000, (impact?.t ?? Infinity) + 800);
}

/** Lies of CHECK-VALUES: 5i 60 to 8i 63 degrees; the driver's and the 9-iron's from memory. */
const usualLie: Readonly<Record<ClubId, number>> = {
  driver: 57,
  "5-iron": 60,
  "6-iron": 61,
  "7-iron": 62,
  "8-iron": 63,
  "9-iron": 63.5,
};

/** A phone put down by a person: on the hand line within a step, a little off level, the whole swing in the picture. */
function drawCamera(condition: Condition, random: Random): SceneSettings["camera"] {
  const [width, height] = condition.size;
  const distance = between(random, condition.distance[0], condition.distance[1]);
  const handLine = 0.55;
  const across = condition.endOn ? handLine : handLine + between(random, -0.25, 0.25);
  const lens = condition.endOn ? 0.95 : between(random, 0.7, 1.15);
  return lookAtCamera({
    position: worldPoint(-distance, across, lens),
    target: worldPoint(0, handLine + between(random, -0.12, 0.12), 1.02 + between(random, -0.06, 0.06)),
    roll: radians(between(random, -0.03, 0.03)),
    focal: pixels(width * between(random, 1.25, 1.7) * (distance < 3.3 ? 0.72 : 1)),
    width: pixels(width),
    height: pixels(height),
    handed: condition.handed,
  });
}

/** Practice sticks pushed into the ground beside and behind the ball, as golfers do, within reach of the hands in the picture. */
function decoySticks(random: Random): readonly Bar[] {
  const stick = (x: number, y: number, leanX: number, leanY: number): Bar => ({
    from: { x, y, z: 0 },
    to: { x: x + leanX, y: y + leanY, z: 1.15 },
    radius: 0.004,
    colour: colourFromHex(random() < 0.5 ? "#f4d21f" : "#ff6a13"),
    cover: 1,
  });
  return [
    stick(
      between(random, 0.8, 1.6),
      between(random, -0.5, -0.1),
      between(random, -0.1, 0.1),
      between(random, -0.3, 0.6),
    ),
    stick(between(random, 0.6, 1.5), between(random, 0.9, 1.4), between(random, -0.1, 0.1), between(random, -0.6, 0.2)),
  ];
}
