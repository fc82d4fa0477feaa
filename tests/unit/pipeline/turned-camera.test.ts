import { repsInPicture, type SeenInPicture } from "@overcue/client-capture/pipeline/reps-in-picture";
import type { Body } from "@overcue/client-capture/pipeline/body";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { expect, it } from "vitest";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

interface Turned {
  readonly x: number;
  readonly y: number;
}

const moved = <P extends Turned>(point: P, { x, y }: Turned): P => ({ ...point, x: point.x + x, y: point.y + y });

const movedPoint = (point: Point<"image">, turned: Turned): Point<"image"> =>
  imagePoint(point.x + turned.x, point.y + turned.y);

const movedShaft = (shaft: ShaftInImage, turned: Turned): ShaftInImage =>
  shaft.status === "lost"
    ? shaft
    : {
        ...shaft,
        grip: movedPoint(shaft.grip, turned),
        head: shaft.head === null ? null : movedPoint(shaft.head, turned),
      };

const movedBody = (body: Body | null, turned: Turned): Body | null =>
  body === null ? null : { ...body, landmarks: body.landmarks.map((landmark) => moved(landmark, turned)) };

it("K5.9 a clip from a hand that moves gives the reps that it gives from a tripod", () => {
  const session = practiceSession(2);
  const { scene } = session;
  const { station } = scene.plan.golfer;
  const { width } = scene.camera;
  // A pose of each picture, as a clip has.
  const pose = { ...scene.pose, perSecond: scene.framesPerSecond / 0.85, delayMs: 0 };
  const still: SeenInPicture[] = [];
  const held: SeenInPicture[] = [];
  for (const { t, shaft, body } of simulateSightings({ ...session, scene: { ...scene, pose } }, usualSightErrors)) {
    // Farther than the hands creep away by in the first half second, and as slowly.
    const turned = { x: 0.03 * width * Math.sin(t / 400), y: 0.03 * width * Math.sin(t / 310) };
    still.push({ t, width, shaft, body, turned: { x: 0, y: 0 } });
    held.push({ t, width, shaft: movedShaft(shaft, turned), body: movedBody(body, turned), turned });
  }
  const dated = repsInPicture(still, station);
  expect(dated.length).toBeGreaterThan(2);
  const again = repsInPicture(held, station);
  expect(again.map(({ kind }) => kind)).toEqual(dated.map(({ kind }) => kind));
  const instants = (reps: typeof dated): number[] => reps.flatMap(({ checkpoints }) => checkpoints.map(({ t }) => t));
  for (const [at, t] of instants(again).entries()) expect(t).toBeCloseTo(instants(dated)[at] ?? Number.NaN, 3);
});
