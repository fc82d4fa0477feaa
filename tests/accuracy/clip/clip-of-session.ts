import type { SeenInPicture } from "@overcue/client-capture/pipeline/reps-in-picture";
import type { PracticeSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

/** A session as a clip from a tripod whose camera nobody knows: a pose of each picture, as `npm run measure` has, and nothing of the camera told. */
export function clipOfSession(session: PracticeSession): SeenInPicture[] {
  const { scene } = session;
  const pose = { ...scene.pose, perSecond: scene.framesPerSecond / 0.85, delayMs: 0 };
  const sightings = simulateSightings({ ...session, scene: { ...scene, pose } }, usualSightErrors);
  return Array.from(sightings, ({ t, shaft, body }) => ({
    t,
    width: scene.camera.width,
    shaft,
    body,
    turned: { x: 0, y: 0 },
  }));
}
