import { describe, expect, it } from "vitest";
import { demoMotion } from "@overcue/client-capture/demo-motion/demo-motion";
import {
  evenPlaces,
  slowTempo,
  tourTempo,
  usualGolfer,
  type DemoPlanItem,
} from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import { pictureReps } from "@overcue/client-capture/swing/picture-reps";
import type { PictureMoment } from "@overcue/client-capture/swing/picture-moment";
import { project } from "@overcue/shared-geometry/camera-project";
import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import type { Camera } from "@overcue/shared-geometry/camera";
import { pixels } from "@overcue/shared-geometry/units";
import { gaussian, seededRandom } from "../../scenes/random.ts";

const camera: Camera = defaultCamera(pixels(720), pixels(1280), "right");
const pixelsToTheMetre = camera.focal / 4;
const still: DemoPlanItem = { do: "still", seconds: 1 };

/** A motion as a camera down the line shows it, hands and shaft shaken by a pixel or two and the fast part without a shaft. */
function pictures(
  items: readonly DemoPlanItem[],
  framesPerSecond = 30,
): { moments: PictureMoment[]; motion: ReturnType<typeof demoMotion> } {
  const motion = demoMotion({ golfer: usualGolfer, club: true, ball: true, items: [still, ...items, still] });
  const random = seededRandom(5);
  const moments = Array.from({ length: Math.floor(motion.duration * framesPerSecond) }, (_, frame): PictureMoment => {
    const { body, club } = motion.at(frame / framesPerSecond);
    const grip = club && project(camera, club.grip);
    const head = club && project(camera, club.head);
    const hands = project(camera, body.trailHand);
    const shoulder = project(camera, body.leadShoulder);
    const shake = (): number => 0.7 * gaussian(random);
    return {
      t: (frame * 1000) / framesPerSecond,
      hands: hands && { x: hands.x + shake(), y: hands.y + shake() },
      shaft: grip && head && { angle: Math.atan2(head.y - grip.y, head.x - grip.x), grip, head },
      leadShoulder: shoulder,
      scale: pixelsToTheMetre,
    };
  });
  return { moments, motion };
}

describe("reps told from the picture alone", () => {
  it.each([
    ["a full swing", [{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo } as const], 1],
    ["a slow rehearsal", [{ do: "rep", kind: "rehearsal", places: evenPlaces, tempo: slowTempo } as const], 1],
    [
      "a waggle and a practice brush",
      [{ do: "distraction", what: "waggle" } as const, still, { do: "distraction", what: "practice-brush" } as const],
      0,
    ],
    [
      "looking up and re-gripping",
      [{ do: "distraction", what: "look-up" } as const, still, { do: "distraction", what: "re-grip" } as const],
      0,
    ],
  ])("K3.1 finds the reps of %s", (_, items, count) => {
    expect(pictureReps(pictures(items).moments).length).toBe(count);
  });

  it("dates top and impact within a frame or two at 30 pictures a second", () => {
    const { moments, motion } = pictures([{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo }]);
    const [rep] = pictureReps(moments);
    for (const [checkpoint, frames] of [
      ["top", 2.5],
      ["impact", 1.5],
    ] as const) {
      const truth = motion.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? Infinity;
      const dated = rep?.checkpoints.find((one) => one.checkpoint === checkpoint)?.t ?? 0;
      expect(Math.abs(dated - truth), checkpoint).toBeLessThan((frames * 1000) / 30);
    }
  });

  it("K3.4 says nothing of a clip without a club pointing down to the ball first", () => {
    const { moments } = pictures([{ do: "rep", kind: "full", places: evenPlaces, tempo: tourTempo }]);
    expect(pictureReps(moments.map((moment) => ({ ...moment, shaft: null })))).toEqual([]);
    expect(pictureReps([])).toEqual([]);
  });
});
