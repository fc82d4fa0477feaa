import { describe, expect, it } from "vitest";
import { demoCamera } from "@overcue/client-capture/demo-motion/demo-camera";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import {
  evenPlaces,
  placesOf,
  slowTempo,
  tourTempo,
  usualGolfer,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { project } from "@overcue/shared-geometry/camera-project";
import { exactCamera } from "@overcue/shared-geometry/camera-spread";
import { filterShaft, startFilter, type FilterInput } from "@overcue/shared-geometry/filter-shaft";
import { worldPoint } from "@overcue/shared-geometry/point";
import { anglesOf, directionOf } from "@overcue/shared-geometry/shaft-angles";
import { smoothRep } from "@overcue/shared-geometry/smooth-rep";
import { unrestAt } from "@overcue/shared-geometry/swing-pace";
import { milliseconds } from "@overcue/shared-geometry/units";
import { along, dot, normalise, subtract } from "@overcue/shared-geometry/vector";
import type { ShaftInWorld } from "@overcue/shared-geometry/world-shaft";
import { seeShaft, statedNoise } from "../../accuracy/lift/see-shaft.ts";
import { namedRandom } from "../../scenes/random.ts";

const camera = demoCamera(720, 1280, "right");
const setting = { through: exactCamera(camera), settings: usualGolfer.station };

function rep(tempo: typeof slowTempo, flatToSteep: number) {
  const items = [
    { do: "still", seconds: 0.6 },
    { do: "rep", kind: "full", places: flatToSteep === 0 ? evenPlaces : placesOf(flatToSteep), tempo },
  ] as const;
  return demoMotion({ golfer: usualGolfer, club: true, ball: true, items });
}

type Motion = ReturnType<typeof rep>;

function inputsOf(motion: Motion, framesPerSecond: number, until: number): FilterInput[] {
  const random = namedRandom(3, "filter");
  const inputs: FilterInput[] = [];
  for (let t = 0; t <= until; t += 1000 / framesPerSecond) {
    const { club } = motion.at(t / 1000);
    const seen = club && seeShaft(camera, usualGolfer.station, club, statedNoise, random);
    inputs.push({ t: milliseconds(t), seen: seen && { ...seen, t: milliseconds(t) } });
  }
  return inputs;
}

function run(inputs: readonly FilterInput[]): (ShaftInWorld | null)[] {
  let state = startFilter;
  return inputs.map((input) => {
    const next = filterShaft(state, input, setting);
    state = next.state;
    return next.output.shaft;
  });
}

const leanOf = (shaft: Pick<ShaftInWorld, "grip" | "toHead">): number => {
  const sight = normalise(subtract(shaft.grip, camera.position));
  return sight ? Math.asin(dot(shaft.toHead, sight)) : NaN;
};

const angleSd = ({ toHead, covariance }: ShaftInWorld): number =>
  Math.sqrt((covariance[18] ?? 0) * (1 - toHead.z ** 2) + (covariance[24] ?? 0));

/** Of the shaft in the picture, at the grip. */
const pictureAngle = ({ grip, toHead }: Pick<ShaftInWorld, "grip" | "toHead">): number => {
  const beyond = along(grip, toHead, 0.01);
  const [from, to] = [project(camera, grip), project(camera, worldPoint(beyond.x, beyond.y, beyond.z))];
  return from && to ? Math.atan2(to.y - from.y, to.x - from.x) : NaN;
};

const pictureAngleSd = (shaft: ShaftInWorld): number => {
  const { azimuth, elevation } = anglesOf(shaft.toHead);
  const level = Math.cos(elevation);
  const turned = (by: readonly [number, number]): number => {
    const toHead = directionOf(azimuth + by[0], elevation + by[1]);
    return pictureAngle({ ...shaft, toHead }) - pictureAngle(shaft);
  };
  const small = 1e-5;
  const [byAzimuth, byElevation] = [turned([small / level, 0]) / (small / level), turned([0, small]) / small];
  const c = (index: number): number => shaft.covariance[index] ?? 0;
  return Math.sqrt(byAzimuth ** 2 * c(18) + 2 * byAzimuth * byElevation * c(19) + byElevation ** 2 * c(24));
};

const impactOf = (motion: Motion): number =>
  motion.checkpoints.find(({ checkpoint }) => checkpoint === "impact")?.t ?? NaN;

describe("filter over a rep", () => {
  it("F1 coasts over unseen pictures with a growing spread", () => {
    const motion = rep(slowTempo, 0);
    const inputs = inputsOf(motion, 60, 2200).map((input) => (input.t > 1800 ? { ...input, seen: null } : input));
    const unseen = run(inputs).flatMap((shaft, index) =>
      (inputs[index]?.t ?? 0) > 1790 && shaft ? [angleSd(shaft)] : [],
    );
    expect(unseen.length).toBeGreaterThan(20);
    unseen.slice(1).forEach((sd, index) => {
      expect(sd).toBeGreaterThan(unseen[index] ?? Infinity);
    });
  });

  it("F1 answers nothing before the first shaft", () => {
    expect(run([{ t: milliseconds(0), seen: null }])).toStrictEqual([null]);
    expect(smoothRep([{ t: milliseconds(0), seen: null }], setting)).toStrictEqual([]);
    expect(smoothRep([], setting)).toStrictEqual([]);
  });

  it("F2 counts both leans of a leaning club held still with the hands over the ball", () => {
    // Hands over the ball's place along the target line, where no habit of a swing speaks for either lean.
    const lean = (40 * Math.PI) / 180;
    const club = {
      grip: { x: 0, y: 0.45, z: 1.3 },
      toHead: { x: -Math.sin(lean), y: -0.5 * Math.cos(lean), z: -Math.sqrt(0.75) * Math.cos(lean) },
    };
    const random = namedRandom(5, "held");
    const inputs = Array.from({ length: 40 }, (_, index): FilterInput => {
      const t = milliseconds(index * 33);
      const seen = seeShaft(camera, usualGolfer.station, club, statedNoise, random);
      return { t, seen: seen && { ...seen, t } };
    });
    const [live, finished] = [run(inputs).at(-1), smoothRep(inputs, setting).at(-1)];
    for (const shaft of [live, finished]) {
      if (!shaft) throw new Error("not lifted");
      const off = Math.abs(leanOf(shaft) - leanOf(club));
      expect(off).toBeLessThan(3 * angleSd(shaft));
      expect(angleSd(shaft)).toBeGreaterThan(0.3);
    }
  });

  it.each([
    ["slow, even", slowTempo, 0, 60],
    ["slow, flat then steep", slowTempo, 1.2, 30],
    ["slow, steep then flat", slowTempo, -1, 60],
    ["full, even", tourTempo, 0, 60],
    ["full, flat then steep", tourTempo, 1.2, 60],
    ["full, steep then flat", tourTempo, -1, 60],
  ])("F2 tells which way the shaft leans, up to impact: %s", (_, tempo, flatToSteep, framesPerSecond) => {
    const motion = rep(tempo, flatToSteep);
    const smoothed = smoothRep(inputsOf(motion, framesPerSecond, impactOf(motion) + 300), setting);
    const leaning = smoothed.flatMap((shaft) => {
      const { club } = motion.at(shaft.t / 1000);
      const really = club ? leanOf(club) : 0;
      return shaft.t <= impactOf(motion) && Math.abs(really) > 0.25 ? [really * leanOf(shaft)] : [];
    });
    expect(leaning.length).toBeGreaterThan(20);
    expect(leaning.filter((product) => product < 0)).toHaveLength(0);
  });

  it("F3 does not average away the lasting part of the depth", () => {
    const motion = rep(slowTempo, 0);
    const finished = smoothRep(inputsOf(motion, 60, 3000), setting);
    const least = Math.sqrt(0.8) * statedNoise.depth;
    for (const { covariance } of finished) expect(Math.sqrt(covariance[0] ?? 0)).toBeGreaterThanOrEqual(0.999 * least);
  });

  it("F7 does not know better than the picture shows: a shaft that is suddenly seen elsewhere is as uncertain as that is far", () => {
    const byDegrees = 25;
    const inputs = inputsOf(rep(slowTempo, 0), 60, 1500);
    const last = inputs.at(-1)?.seen;
    if (!last) throw new Error("not seen");
    const { x, y } = last.direction;
    const [cos, sin] = [Math.cos((byDegrees * Math.PI) / 180), Math.sin((byDegrees * Math.PI) / 180)];
    const elsewhere = { ...last, head: null, direction: { x: x * cos - y * sin, y: x * sin + y * cos } };
    const jumped = [...inputs.slice(0, -1), { t: last.t, seen: elsewhere }];
    for (const [shaft, undisturbed] of [
      [run(jumped).at(-1), run(inputs).at(-1)],
      [smoothRep(jumped, setting).at(-1), smoothRep(inputs, setting).at(-1)],
    ]) {
      if (!shaft || !undisturbed) throw new Error("not lifted");
      const off = pictureAngle(shaft) - Math.atan2(elsewhere.direction.y, elsewhere.direction.x);
      expect(Math.abs(off)).toBeGreaterThan((10 * Math.PI) / 180);
      expect(pictureAngleSd(shaft)).toBeGreaterThan(0.9 * Math.abs(off));
      expect(pictureAngleSd(undisturbed)).toBeLessThan((2 * Math.PI) / 180);
    }
  });

  it("F5 expects as much change as swings of every pace hold", () => {
    const h = 1 / 120;
    for (const tempo of [slowTempo, tourTempo]) {
      const motion = rep(tempo, 0.5);
      const directions = Array.from({ length: Math.floor(impactOf(motion) / 1000 / h) }, (_, index) => {
        const { club } = motion.at(index * h);
        if (!club) throw new Error("no club");
        return club.toHead;
      });
      const rates = directions.map((to, index) => {
        const from = directions[Math.max(0, index - 1)] ?? to;
        return { x: (to.x - from.x) / h, y: (to.y - from.y) / h, z: (to.z - from.z) / h };
      });
      const within = Math.round(0.25 / h);
      const ratios = rates.flatMap((rate, index) => {
        const later = rates[index + 6];
        const toHead = directions[index];
        if (!later || !toHead) return [];
        const around = rates.slice(Math.max(0, index - within), index + within + 1);
        const pace = Math.max(...around.map(({ x, y, z }) => Math.hypot(x, y, z)));
        const change = subtract(later, rate);
        const inward = dot(change, toHead);
        const across = Math.sqrt(Math.max(0, dot(change, change) - inward * inward)) / Math.SQRT2;
        return [across / Math.sqrt(unrestAt({ turn: pace, hands: 0 }).turn * 6 * h)];
      });
      const inside = ratios.filter((ratio) => ratio < 2).length / ratios.length;
      expect(inside).toBeGreaterThan(0.95);
    }
  });
});
