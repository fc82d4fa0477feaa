import { expect, it } from "vitest";
import { soledHead } from "@overcue/client-capture/pipeline/soled-head";
import { project } from "@overcue/shared-geometry/camera-project";
import { radians } from "@overcue/shared-geometry/units";
import { drawnSession, practiceSession } from "../../scenes/session/practice-session.ts";

/** Where a club that stands still at a moment of a session is taken to rest, and where its head really is; pixels. */
function restAt(index: number, seconds: number) {
  const { scene, motion } = practiceSession(index, drawnSession);
  const { club } = motion.at(seconds);
  const grip = club && project(scene.camera, club.grip);
  const head = club && project(scene.camera, club.head);
  if (!club || !grip || !head) throw new Error("the session shows no club there");
  const angle = radians(Math.atan2(head.y - grip.y, head.x - grip.x));
  return { head, soled: soledHead({ grip, angle }, club.grip.x, scene.camera, scene.plan.golfer.station) };
}

it("a club that stands at the ball rests there", () => {
  const { head, soled } = restAt(9006, 8.5);
  expect(Math.hypot((soled?.x ?? NaN) - head.x, (soled?.y ?? NaN) - head.y)).toBeLessThan(6);
});

it("a club that is held still forward of the ball, a foot over the ground, rests nowhere", () => {
  expect(restAt(9006, 2.5).soled).toBeNull();
  expect(restAt(9015, 20.4).soled).toBeNull();
  expect(restAt(9019, 2.9).soled).toBeNull();
});
