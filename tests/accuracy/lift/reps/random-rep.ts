import {
  flowTempo,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlaces,
  type DemoRepKind,
  type DemoRepPlan,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { demoMotion, type DemoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import type { Handed, StationSettings } from "@overcue/shared-geometry/station";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import { metres, seconds } from "@overcue/shared-geometry/units";
import { between, gaussian, type Random } from "../../../scenes/random.ts";

export const repSpeeds = ["slow", "flow", "full"] as const;
type RepSpeed = (typeof repSpeeds)[number];
const repKinds: readonly DemoRepKind[] = ["full", "half", "pump", "flow", "rehearsal", "continuous"];
const pictureRates = [60, 30] as const;

/** How far a golfer's club may be off the usual plane at shaft level, degrees to either side. */
const mostOffPlane = 35;

export interface RandomRep {
  readonly speed: RepSpeed;
  readonly kind: DemoRepKind;
  readonly handed: Handed;
  readonly framesPerSecond: number;
  /** Of the club at shaft level going back, degrees: positive is inside. */
  readonly offPlane: number;
  readonly motion: DemoMotion;
}

const tempoOf = { slow: slowTempo, flow: flowTempo, full: tourTempo } as const;

/**
 * One rep of an invented golfer with a still address before it. Kinds, speeds, rates and hands take turns; the golfer and where his club passes are drawn:
 * way back and way down each on its own, from plainly flat to plainly steep and the reverse.
 */
export function randomRep(index: number, station: StationSettings, random: Random): RandomRep {
  const speed = repSpeeds[index % repSpeeds.length] ?? "slow";
  const kind = repKinds[Math.floor(index / repSpeeds.length) % repKinds.length] ?? "full";
  const framesPerSecond = pictureRates[Math.floor(index / 2) % pictureRates.length] ?? 60;
  const stretch = Math.exp(between(random, -0.25, 0.25));
  const { backswing, downswing } = tempoOf[speed];
  const offPlane = between(random, -mostOffPlane, mostOffPlane);
  const held = kind !== "pump" && kind !== "continuous" && speed === "slow" && random() < 0.3;
  const rep: DemoRepPlan = {
    do: "rep",
    kind,
    places: placesOff(offPlane, between(random, -mostOffPlane, mostOffPlane), random),
    tempo: { backswing: seconds(backswing * stretch), downswing: seconds(downswing * stretch) },
    handsShift: { x: 0.02 * gaussian(random), y: 0.02 * gaussian(random), z: 0.02 * gaussian(random) },
    ...(held
      ? { hold: { at: checkpointIds[1 + Math.floor(random() * 6)] ?? "top", seconds: between(random, 1, 2) } }
      : {}),
  };
  const golfer = {
    ...usualGolfer,
    height: metres(between(random, 1.62, 1.92)),
    lieDegrees: between(random, 58, 66),
    station,
  };
  const motion = demoMotion({
    golfer,
    club: true,
    ball: true,
    items: [{ do: "still", seconds: between(random, 0.8, 1.6) }, rep, { do: "still", seconds: 0.5 }],
  });
  return { speed, kind, handed: station.handed, framesPerSecond, offPlane, motion };
}

/** From hands to head, metres: near enough to say where a head lies that is so far off plane. */
const reach = 0.82;
const handLine = 0.41;

function placesOff(back: number, down: number, random: Random): DemoPlaces {
  const aside = (degrees: number): number => reach * Math.sin((degrees * Math.PI) / 180);
  return {
    headAtTakeaway: 0.02 + 0.5 * aside(back),
    headAtShaftLevelBack: handLine - 0.25 + aside(back),
    buttBack: between(random, -0.35, 0.5),
    buttDown: between(random, -0.35, 0.5),
    headAtShaftLevelDown: handLine - 0.25 + aside(down),
  };
}
