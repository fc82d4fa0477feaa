import { Group } from "three";
import { bodyMeasures } from "../../demo-motion/body-measures.ts";
import type { BodyJoint, DemoPose } from "../../demo-motion/demo-pose.ts";
import { demoColours } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { FootModel } from "./foot-model.ts";
import { HandModel } from "./hand-model.ts";
import { HeadModel } from "./head-model.ts";
import { layBetween } from "./lay-between.ts";
import { limbGeometry, type LimbProfile } from "./limb-geometry.ts";
import { TorsoLoft, type TrunkRing } from "./torso-loft.ts";

/** For a golfer of 1.78 m. */
const trouserRings: readonly TrunkRing[] = [
  [-0.1, 0.125, 0.105, 0.01],
  [-0.05, 0.166, 0.125, 0.02],
  [0.0, 0.175, 0.13, 0.025],
  [0.06, 0.165, 0.12, 0.02],
  [0.115, 0.15, 0.106, 0.01],
];
const beltRings: readonly TrunkRing[] = [
  [0.1, 0.156, 0.113, 0.01],
  [0.13, 0.153, 0.11, 0.01],
];
const shirtRings: readonly TrunkRing[] = [
  [0.115, 0.151, 0.109, 0.01],
  [0.18, 0.15, 0.108, 0.01],
  [0.27, 0.162, 0.115, 0.02],
  [0.36, 0.178, 0.123, 0.03],
  [0.43, 0.185, 0.118, 0.03],
  [0.48, 0.175, 0.098, 0.024],
  [0.515, 0.135, 0.078, 0.016],
  [0.54, 0.072, 0.064, 0.008],
  [0.556, 0.06, 0.058, 0.004],
];

type Bone = readonly [from: BodyJoint, to: BodyJoint, length: number, profile: LimbProfile, colour: number];

/** The demonstrated golfer: an invented, plain figure in shirt, trousers, cap and one glove. */
export class Mannequin {
  readonly group = new Group();
  readonly #moves: readonly ((pose: DemoPose) => void)[];

  constructor(height: number) {
    const size = height / 1.78;
    const m = bodyMeasures(height);
    const moves: ((pose: DemoPose) => void)[] = [];
    const scaled = (profile: LimbProfile): LimbProfile => profile.map(([share, radius]) => [share, radius * size]);

    const { skin, shirt, trousers, belt } = demoColours;
    for (const [rings, colour] of [
      [trouserRings, trousers],
      [beltRings, belt],
      [shirtRings, shirt],
    ] as const) {
      const loft = new TorsoLoft(rings, size);
      this.group.add(drawPart(loft.geometry, colour));
      moves.push((pose) => {
        loft.pose(pose);
      });
    }

    for (const [from, to, length, profile, colour] of limbs(m)) {
      const limb = drawPart(limbGeometry(length, scaled(profile)), colour);
      this.group.add(limb);
      moves.push(({ body }) => {
        layBetween(limb, body[from], body[to]);
      });
    }

    const models = [
      new HeadModel(size),
      new HandModel("lead", size),
      new HandModel("trail", size),
      new FootModel("lead", m),
      new FootModel("trail", m),
    ];
    for (const model of models) {
      this.group.add(model.group);
      moves.push((pose) => {
        model.pose(pose);
      });
    }
    const neck = drawPart(
      limbGeometry(
        0.1 * size,
        scaled([
          [0, 0.058],
          [1, 0.054],
        ]),
      ),
      skin,
    );
    this.group.add(neck);
    moves.push(({ body }) => {
      layBetween(neck, body.neck, body.head);
    });
    this.#moves = moves;
  }

  pose(pose: DemoPose): void {
    for (const move of this.#moves) move(pose);
  }
}

function limbs(m: ReturnType<typeof bodyMeasures>): readonly Bone[] {
  const { skin, shirt, trousers } = demoColours;
  const sides = ["lead", "trail"] as const;
  return sides.flatMap((side): Bone[] => [
    [
      `${side}Shoulder`,
      `${side}Elbow`,
      m.upperArm * 0.72,
      [
        [0, 0.064],
        [0.35, 0.06],
        [1, 0.056],
      ],
      shirt,
    ],
    [
      `${side}Shoulder`,
      `${side}Elbow`,
      m.upperArm,
      [
        [0, 0.05],
        [0.5, 0.048],
        [1, 0.04],
      ],
      skin,
    ],
    [
      `${side}Elbow`,
      `${side}Wrist`,
      m.forearm,
      [
        [0, 0.041],
        [0.25, 0.044],
        [0.7, 0.033],
        [1, 0.027],
      ],
      skin,
    ],
    [
      `${side}Hip`,
      `${side}Knee`,
      m.thigh,
      [
        [0, 0.088],
        [0.3, 0.086],
        [1, 0.062],
      ],
      trousers,
    ],
    [
      `${side}Knee`,
      `${side}Ankle`,
      m.shank,
      [
        [0, 0.062],
        [0.3, 0.064],
        [0.8, 0.053],
        [1, 0.054],
      ],
      trousers,
    ],
  ]);
}
