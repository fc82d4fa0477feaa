import { expect, it } from "vitest";
import { repsInPicture, type SeenInPicture } from "@overcue/client-capture/pipeline/reps-in-picture";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

it("K5.7 a clip of which nobody said which way the golfer plays gives the reps that it gives where it was said", () => {
  const session = practiceSession(1);
  expect(session.scene.plan.golfer.station.handed).toBe("left");
  const { scene } = session;
  const pictures: SeenInPicture[] = [];
  for (const { t, shaft, body } of simulateSightings(session, usualSightErrors))
    pictures.push({ t, width: scene.camera.width, shaft, body, turned: { x: 0, y: 0 } });
  const { station } = scene.plan.golfer;
  const said = repsInPicture(pictures, station);
  expect(said.length).toBeGreaterThan(2);
  expect(repsInPicture(pictures, { ...station, handed: "right" })).toEqual(said);
});
