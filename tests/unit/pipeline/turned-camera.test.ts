import { repsInPicture } from "@overcue/client-capture/pipeline/reps-in-picture";
import type { Body } from "@overcue/client-capture/pipeline/body";
import type { Turned } from "@overcue/client-capture/shaft/background-state";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { expect, it } from "vitest";
import { clipOfSession } from "../../accuracy/clip/clip-of-session.ts";
import { practiceSession } from "../../scenes/session/practice-session.ts";

const moved = <P extends Turned>(point: P, { x, y }: Turned): P => ({ ...point, x: point.x + x, y: point.y + y });

const movedShaft = (shaft: ShaftInImage, turned: Turned): ShaftInImage =>
  shaft.status === "lost"
    ? shaft
    : { ...shaft, grip: moved(shaft.grip, turned), head: shaft.head === null ? null : moved(shaft.head, turned) };

const movedBody = (body: Body | null, turned: Turned): Body | null =>
  body === null ? null : { ...body, landmarks: body.landmarks.map((landmark) => moved(landmark, turned)) };

it("K5.9 a clip from a hand that moves gives the reps that it gives from a tripod", () => {
  const session = practiceSession(2);
  const { station } = session.scene.plan.golfer;
  const still = clipOfSession(session);
  const held = still.map(({ t, width, shaft, body }) => {
    // Farther than the hands creep away by in the first half second, and as slowly.
    const turned = { x: 0.03 * width * Math.sin(t / 400), y: 0.03 * width * Math.sin(t / 310) };
    return { t, width, shaft: movedShaft(shaft, turned), body: movedBody(body, turned), turned };
  });
  const dated = repsInPicture(still, station);
  expect(dated.length).toBeGreaterThan(2);
  const again = repsInPicture(held, station);
  expect(again.map(({ kind }) => kind)).toEqual(dated.map(({ kind }) => kind));
  const instants = (reps: typeof dated): number[] => reps.flatMap(({ checkpoints }) => checkpoints.map(({ t }) => t));
  for (const [at, t] of instants(again).entries()) expect(t).toBeCloseTo(instants(dated)[at] ?? Number.NaN, 3);
});
