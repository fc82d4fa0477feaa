import { Group, SphereGeometry } from "three";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";
import { demoColours } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { layBetween } from "./lay-between.ts";
import { limbGeometry } from "./limb-geometry.ts";

/** A closed hand, its wrist towards the forearm; the lead one wears a glove. */
export class HandModel {
  readonly group = new Group();
  readonly #side: "lead" | "trail";
  readonly #palm;
  readonly #fist;
  readonly #length: number;

  constructor(side: "lead" | "trail", size: number) {
    this.#side = side;
    this.#length = 0.08 * size;
    const colour = side === "lead" ? demoColours.glove : demoColours.skin;
    this.#palm = drawPart(
      limbGeometry(this.#length, [
        [0, 0.028 * size],
        [0.6, 0.036 * size],
        [1, 0.034 * size],
      ]),
      colour,
    );
    this.#fist = drawPart(new SphereGeometry(0.046 * size, 9, 6), colour);
    this.#fist.scale.set(0.85, 1, 0.85);
    this.group.add(this.#palm, this.#fist);
  }

  pose({ body, club }: DemoPose): void {
    const hand = body[`${this.#side}Hand`];
    layBetween(this.#palm, body[`${this.#side}Wrist`], hand);
    const along = club?.toHead ?? { x: 0, y: 0, z: -1 };
    layBetween(this.#fist, hand, { x: hand.x + along.x, y: hand.y + along.y, z: hand.z + along.z });
  }
}
