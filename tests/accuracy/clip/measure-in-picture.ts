import { repsInPicture } from "@overcue/client-capture/pipeline/reps-in-picture";
import { project } from "@overcue/shared-geometry/camera-project";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { practiceSession, type PracticeSession } from "../../scenes/session/practice-session.ts";
import { judgeSession, type JudgedSession } from "../clock/judge-session.ts";
import { clipOfSession } from "./clip-of-session.ts";
import { trueReps, type TrueRep } from "../clock/true-reps.ts";

/** The head has visibly left the ball when it has moved this far in the picture, metres of the golfer's scale: the takeaway that a clip without a station is asked for. */
const visibly = 0.03;

/** A session measured as a clip whose camera nobody knows. */
export function measureInPicture(index: number): JudgedSession {
  const session = practiceSession(index);
  const { scene, motion, speed } = session;
  const truths = trueReps(motion).map((rep) => withVisibleTakeaway(rep, session));
  const reps = repsInPicture(clipOfSession(session), scene.plan.golfer.station);
  return judgeSession(truths, reps, { speed, framesPerSecond: scene.framesPerSecond });
}

/** Out of a flow there is no such moment, and none is asked for. */
function withVisibleTakeaway(rep: TrueRep, session: PracticeSession): TrueRep {
  const { checkpoints } = rep;
  const at = (id: CheckpointId): number | undefined => checkpoints.find(({ checkpoint }) => checkpoint === id)?.t;
  const [address, top] = [at("address"), at("top")];
  const visible = address === undefined || top === undefined ? null : visiblyLeft(session, address, top);
  return {
    ...rep,
    checkpoints: checkpoints.flatMap((one) => {
      if (one.checkpoint !== "takeaway") return [one];
      return visible === null ? [] : [{ ...one, t: visible, until: visible }];
    }),
  };
}

function visiblyLeft({ scene: { camera }, motion }: PracticeSession, address: number, top: number): number | null {
  const headAt = (t: number): { readonly x: number; readonly y: number } | null => {
    const { club } = motion.at(t / 1000);
    return club === null ? null : project(camera, club.head);
  };
  const rest = headAt(address);
  const pixelsPerMetre = camera.focal / Math.hypot(camera.position.x, camera.position.y);
  for (let t = address; t < top; t += 2) {
    const head = headAt(t);
    if (rest === null || head === null) return null;
    if (Math.hypot(head.x - rest.x, head.y - rest.y) > visibly * pixelsPerMetre) return t;
  }
  return null;
}
