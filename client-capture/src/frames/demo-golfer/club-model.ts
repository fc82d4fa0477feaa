import { BoxGeometry, Group, Matrix4, Vector3 } from "three";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { DemoPose } from "../../demo-motion/demo-pose.ts";
import { rodColours, demoColours, type RodColour } from "./demo-colours.ts";
import { drawPart } from "./draw-part.ts";
import { rodGeometry } from "./limb-geometry.ts";

const gripLength = 0.27;

/** Iron and practice rod, built along +y from the butt at the origin; the blade's toe points along -z. */
export class ClubModel {
  readonly group = new Group();
  readonly #basis = new Matrix4();

  constructor(station: StationSettings, rodColour: RodColour) {
    const { clubLength, rodBeyondButt } = station;
    const { grip, steel, blade } = demoColours;
    const shaft = drawPart(rodGeometry(clubLength - gripLength - 0.03, 0.0075, 0.0045), steel);
    shaft.position.y = gripLength;
    const handle = drawPart(rodGeometry(gripLength, 0.014, 0.0095, 10), grip);
    const hosel = drawPart(rodGeometry(0.06, 0.0062, 0.0068), blade);
    hosel.position.y = clubLength - 0.065;
    const face = drawPart(new BoxGeometry(0.014, 0.042, 0.075), blade);
    face.position.set(0.003, clubLength - 0.012, -0.032);
    face.rotation.x = -0.48;
    this.group.add(shaft, handle, hosel, face);
    if (rodBeyondButt > 0) {
      const onShaft = Math.max(0, Math.min(station.stickLength - rodBeyondButt, clubLength - 0.12));
      const colour = rodColours[rodColour];
      const beyond = drawPart(rodGeometry(rodBeyondButt, 0.0045, 0.0045), colour);
      beyond.position.y = -1 * rodBeyondButt;
      const along = drawPart(rodGeometry(Math.max(0.01, onShaft - gripLength), 0.0085, 0.0075), colour);
      along.position.y = gripLength;
      this.group.add(beyond, along);
    }
    this.group.matrixAutoUpdate = false;
  }

  pose({ club }: DemoPose): void {
    this.group.visible = club !== null;
    if (!club) return;
    const along = new Vector3(club.toHead.x, club.toHead.y, club.toHead.z);
    // Out of the swing plane on the far side of the ball: where the toe of the blade points all the way round.
    const toe = new Vector3(0, -0.839, 0.545);
    toe.addScaledVector(along, -toe.dot(along)).normalize();
    const back = toe.negate();
    const across = new Vector3().crossVectors(along, back);
    this.#basis.makeBasis(across, along, back).setPosition(club.butt.x, club.butt.y, club.butt.z);
    this.group.matrix.copy(this.#basis);
    this.group.matrixWorldNeedsUpdate = true;
  }
}
