import { normalise, type Vector } from "@overcue/shared-geometry/vector";
import type { Colour } from "../colour.ts";
import type { Light } from "../light.ts";
import { between, type Random } from "../random.ts";
import { seeDirection, type View } from "../view.ts";

export type LightName = "sun" | "overcast" | "shade" | "backlight" | "dusk" | "night" | "lamps";

/** The light, where it comes from in the world, and how hard the shadows on the ground are. */
export interface SceneLight {
  readonly light: Light;
  readonly towardsSun: Vector;
  /** Share of the ground's light that a full shadow takes, and its edge's half-width in metres. */
  readonly shadow: number;
  readonly shadowEdge: number;
  /** What the sky and the far end are multiplied by. */
  readonly far: Colour;
}

interface Recipe {
  readonly towardsSun: readonly [number, number, number];
  readonly sun: Colour;
  readonly sky: Colour;
  readonly bounce: Colour;
  readonly shadow: number;
  readonly shadowEdge: number;
  readonly far: Colour;
}

/** The golfer looks towards -y, the camera towards +x. */
function recipe(name: LightName, random: Random): Recipe {
  const side = random() < 0.5 ? -1 : 1;
  switch (name) {
    case "sun":
      return {
        towardsSun: [between(random, -0.8, 0.1), side * between(random, 0.3, 0.9), between(random, 0.6, 1.1)],
        sun: [0.95, 0.88, 0.76],
        sky: [0.22, 0.27, 0.34],
        bounce: [0.07, 0.09, 0.05],
        shadow: 0.62,
        shadowEdge: 0.003,
        far: [1, 1, 1],
      };
    case "overcast":
      return {
        towardsSun: [0, 0, 1],
        sun: [0.28, 0.28, 0.28],
        sky: [0.66, 0.68, 0.7],
        bounce: [0.12, 0.14, 0.1],
        shadow: 0.3,
        shadowEdge: 0.12,
        far: [1.05, 1.05, 1.05],
      };
    case "shade":
      return {
        towardsSun: [0, 0, 1],
        sun: [0.06, 0.06, 0.07],
        sky: [0.32, 0.36, 0.42],
        bounce: [0.06, 0.07, 0.06],
        shadow: 0.25,
        shadowEdge: 0.15,
        far: [1.5, 1.5, 1.45],
      };
    case "backlight":
      return {
        towardsSun: [1, side * between(random, 0.1, 0.5), between(random, 0.25, 0.45)],
        sun: [0.8, 0.72, 0.58],
        sky: [0.24, 0.25, 0.27],
        bounce: [0.06, 0.07, 0.05],
        shadow: 0.6,
        shadowEdge: 0.004,
        far: [1.7, 1.6, 1.45],
      };
    case "dusk":
      return {
        towardsSun: [0.2, 0, 1],
        sun: [0.05, 0.05, 0.06],
        sky: [0.26, 0.29, 0.38],
        bounce: [0.04, 0.045, 0.05],
        shadow: 0.2,
        shadowEdge: 0.15,
        far: [0.6, 0.55, 0.6],
      };
    case "night":
      return {
        towardsSun: [-0.6, side * 0.5, 0.9],
        sun: [0.62, 0.6, 0.5],
        sky: [0.05, 0.05, 0.06],
        bounce: [0.03, 0.035, 0.03],
        shadow: 0.7,
        shadowEdge: 0.006,
        far: [0.02, 0.022, 0.03],
      };
    case "lamps":
      return {
        towardsSun: [-0.2, side * 0.3, 1],
        sun: [0.42, 0.4, 0.35],
        sky: [0.34, 0.33, 0.3],
        bounce: [0.14, 0.13, 0.11],
        shadow: 0.35,
        shadowEdge: 0.06,
        far: [1, 1, 1],
      };
  }
}

export function makeLight(name: LightName, random: Random, view: View): SceneLight {
  const made = recipe(name, random);
  const [x, y, z] = made.towardsSun;
  const towardsSun = normalise({ x, y, z }) ?? { x: 0, y: 0, z: 1 };
  const total = (channel: 0 | 1 | 2): number => made.sun[channel] * towardsSun.z + made.sky[channel];
  return {
    light: {
      towardsSun: seeDirection(view, towardsSun),
      towardsSky: seeDirection(view, { x: 0, y: 0, z: 1 }),
      sun: made.sun,
      sky: made.sky,
      bounce: made.bounce,
      mirror: {
        up: [1.3 * made.sky[0], 1.3 * made.sky[1], 1.3 * made.sky[2]],
        level: [0.16 * total(0), 0.19 * total(1), 0.11 * total(2)],
        down: [0.11 * total(0), 0.17 * total(1), 0.05 * total(2)],
      },
    },
    towardsSun,
    shadow: made.shadow,
    shadowEdge: made.shadowEdge,
    far: made.far,
  };
}
