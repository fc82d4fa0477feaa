import { mixColour, type Colour } from "./colour.ts";
import type { ViewDirection } from "./view.ts";

/** The light over a scene; directions are in the camera's axes, unit length. */
export interface Light {
  readonly towardsSun: ViewDirection;
  readonly towardsSky: ViewDirection;
  readonly sun: Colour;
  /** What comes from above, and from the ground, where the sun does not reach. */
  readonly sky: Colour;
  readonly bounce: Colour;
  /** What a mirror shows when it looks up, level, and down. */
  readonly mirror: { readonly up: Colour; readonly level: Colour; readonly down: Colour };
}

/** Light on a matt surface with unit normal n, by red, green and blue into `out`. */
export function lightOn(light: Light, nx: number, ny: number, nz: number, out: Float64Array): void {
  const { towardsSun, towardsSky, sun, sky, bounce } = light;
  const facing = Math.max(0, nx * towardsSun[0] + ny * towardsSun[1] + nz * towardsSun[2]);
  const up = 0.5 + 0.5 * (nx * towardsSky[0] + ny * towardsSky[1] + nz * towardsSky[2]);
  out[0] = sun[0] * facing + bounce[0] + (sky[0] - bounce[0]) * up;
  out[1] = sun[1] * facing + bounce[1] + (sky[1] - bounce[1]) * up;
  out[2] = sun[2] * facing + bounce[2] + (sky[2] - bounce[2]) * up;
}

/** What a surface with normal n shows of its surroundings, seen straight on; `shine` is the sharpness of the sun's image in it. */
export function mirrorIn(light: Light, n: ViewDirection, shine: number): Colour {
  const [rx, ry, rz] = [-2 * n[2] * n[0], -2 * n[2] * n[1], 1 - 2 * n[2] * n[2]];
  const [ux, uy, uz] = light.towardsSky;
  const rise = rx * ux + ry * uy + rz * uz;
  const around =
    rise > 0
      ? mixColour(light.mirror.level, light.mirror.up, Math.min(1, 2.5 * rise))
      : mixColour(light.mirror.level, light.mirror.down, Math.min(1, -2.5 * rise));
  const [sx, sy, sz] = light.towardsSun;
  const glint = 3 * Math.max(0, rx * sx + ry * sy + rz * sz) ** shine;
  return [around[0] + glint * light.sun[0], around[1] + glint * light.sun[1], around[2] + glint * light.sun[2]];
}
