import type { RepReading } from "@overcue/client-capture/pipeline/rep-readings";
import type { ToldLive } from "@overcue/client-capture/pipeline/told-live";
import { practiceSession, drawnSession, type PracticeSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";
import { filmSession } from "./film-session.ts";
import { judgeBands, type JudgedBand } from "./judge-bands.ts";
import { judgeLive, type JudgedLive } from "./judge-live.ts";
import { judgeSession, type JudgedSession } from "./judge-session.ts";
import { replaySightings } from "./replay-sightings.ts";
import { trueReps } from "./true-reps.ts";

export interface MeasuredSession {
  readonly judged: JudgedSession;
  readonly live: readonly JudgedLive[];
  readonly bands: readonly JudgedBand[];
}

/** A session whose pose and tracker answers are simulated, as the two err on rendered scenes; every stage after them is real. */
export function measureSimulated(index: number): MeasuredSession {
  const session = practiceSession(index);
  const { reps, live } = replaySightings(session, simulateSightings(session, usualSightErrors));
  return judged(session, reps, live);
}

export interface MeasuredFilm extends MeasuredSession {
  readonly frames: number;
  /** How far the lens that the found sticks gave is from the virtual one, metres; null where they were not found, and the virtual camera was taken. */
  readonly lensOff: number | null;
}

/** A session played by the demo golfer: every stage is real, the pose model and the search for the sticks too. */
export async function measureFilmed(index: number, posesLate: number): Promise<MeasuredFilm> {
  const session = practiceSession(index, drawnSession);
  const found = await filmSession(session, "found", posesLate).catch((error: unknown) => {
    if (String(error).includes("sticks were not found")) return null;
    throw error;
  });
  const { answer, frames } = found ?? (await filmSession(session, "known", posesLate));
  const { position } = session.scene.camera;
  const lens = found?.answer.camera?.position ?? null;
  return {
    ...judged(session, answer.measured.reps, answer.measured.live),
    frames,
    lensOff: lens === null ? null : Math.hypot(lens.x - position.x, lens.y - position.y, lens.z - position.z),
  };
}

function judged(
  { motion, speed, scene: { framesPerSecond } }: PracticeSession,
  reps: readonly RepReading[],
  live: ToldLive,
): MeasuredSession {
  return {
    judged: judgeSession(trueReps(motion), reps, { speed, framesPerSecond }),
    live: judgeLive(motion, live.checkpoints),
    bands: judgeBands(motion, live.bands),
  };
}
