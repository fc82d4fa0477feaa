import { Group } from "three";
import type { BodyMeasures } from "../../demo-motion/body-measures.ts";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";
import { demoColours } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { layBetween } from "./lay-between.ts";
import { limbGeometry } from "./limb-geometry.ts";

/** A shoe from heel to toe with its sole, and the ankle above it. */
export class FootModel {
  readonly group = new Group();
  readonly #side: "lead" | "trail";
  readonly #shoe;
  readonly #sole;

  constructor(side: "lead" | "trail", m: BodyMeasures) {
    this.#side = side;
    const length = m.foot - 0.07;
    this.#shoe = drawPart(
      limbGeometry(length, [
        [0, 0.042],
        [0.35, 0.046],
        [0.75, 0.048],
        [1, 0.036],
      ]),
      demoColours.shoe,
    );
    this.#sole = drawPart(
      limbGeometry(length, [
        [0, 0.043],
        [0.35, 0.043],
        [0.75, 0.051],
        [1, 0.038],
      ]),
      demoColours.sole,
    );
    // Laid along the ground, a limb's own z stays upright: this makes it flat.
    this.#sole.scale.z = 0.24;
    this.group.add(this.#shoe, this.#sole);
  }

  pose({ body }: DemoPose): void {
    const heel = body[`${this.#side}Heel`];
    const toe = body[`${this.#side}Toe`];
    const ankle = body[`${this.#side}Ankle`];
    const length = Math.hypot(toe.x - heel.x, toe.y - heel.y, toe.z - heel.z);
    const along = { x: (toe.x - heel.x) / length, y: (toe.y - heel.y) / length, z: (toe.z - heel.z) / length };
    const onFoot = (ankle.x - heel.x) * along.x + (ankle.y - heel.y) * along.y + (ankle.z - heel.z) * along.z;
    const rise = {
      x: ankle.x - heel.x - onFoot * along.x,
      y: ankle.y - heel.y - onFoot * along.y,
      z: ankle.z - heel.z - onFoot * along.z,
    };
    const high = Math.hypot(rise.x, rise.y, rise.z);
    const at = (forward: number, up: number) => ({
      x: heel.x + forward * along.x + (up / high) * rise.x,
      y: heel.y + forward * along.y + (up / high) * rise.y,
      z: heel.z + forward * along.z + (up / high) * rise.z,
    });
    layBetween(this.#shoe, at(0.038, 0.045), at(0.2, 0.036));
    layBetween(this.#sole, at(0.036, 0.012), at(0.2, 0.01));
  }
}
