import { practiceSession, drawnSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";
import { filmSession } from "./film-session.ts";
import { judgeSession, type JudgedSession } from "./judge-session.ts";
import { replaySightings } from "./replay-sightings.ts";
import { trueReps } from "./true-reps.ts";

/** A session whose pose and tracker answers are simulated, as the two err on rendered scenes; every stage after them is real. */
export function measureSimulated(index: number): JudgedSession {
  const session = practiceSession(index);
  const { reps } = replaySightings(session, simulateSightings(session, usualSightErrors));
  return judgeSession(trueReps(session.motion), reps, {
    speed: session.speed,
    framesPerSecond: session.scene.framesPerSecond,
  });
}

export interface MeasuredFilm {
  readonly judged: JudgedSession;
  readonly frames: number;
  /** How far the lens that the found sticks gave is from the virtual one, metres; null where they were not found, and the virtual camera was taken. */
  readonly lensOff: number | null;
}

/** A session played by the demo golfer: every stage is real, the pose model and the search for the sticks too. */
export async function measureFilmed(index: number): Promise<MeasuredFilm> {
  const session = practiceSession(index, drawnSession);
  const found = await filmSession(session, "found").catch((error: unknown) => {
    if (String(error).includes("sticks were not found")) return null;
    throw error;
  });
  const { answer, frames } = found ?? (await filmSession(session, "known"));
  const { position } = session.scene.camera;
  const lens = found?.answer.camera?.position ?? null;
  return {
    judged: judgeSession(trueReps(session.motion), answer.measured.reps, {
      speed: session.speed,
      framesPerSecond: session.scene.framesPerSecond,
    }),
    frames,
    lensOff: lens === null ? null : Math.hypot(lens.x - position.x, lens.y - position.y, lens.z - position.z),
  };
}
