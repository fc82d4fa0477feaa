import { join } from "node:path";
import { runInChromium } from "../../../client-capture/measure/run-in-chromium.ts";
import type { DemoAnswer } from "../../../client-capture/src/measure-page/measure-demo.ts";
import type { Job } from "../../../client-capture/src/measure-page/job.ts";
import type { PracticeSession } from "../../scenes/session/practice-session.ts";

const client = join(import.meta.dirname, "../../../build/client-capture");

/** The pose model is asked this often a second: what a middling phone manages. */
const posesPerSecond = 15;

export interface FilmedSession {
  readonly answer: DemoAnswer;
  readonly frames: number;
  readonly seconds: number;
}

/**
 * A session played by the demo golfer in Chromium, through the real pose model, tracker, lift and clock, and through the camera that its sticks give
 * (`found`) or the virtual camera itself (`known`). `posesLate`: how many milliseconds after its picture a pose is there. @throws Error with a sentence where the sticks are not found or the page fails.
 */
export async function filmSession(
  { scene, index }: PracticeSession,
  station: "known" | "found",
  posesLate: number,
): Promise<FilmedSession> {
  const job: Job = {
    kind: "demo",
    plan: scene.plan,
    camera: scene.camera,
    framesPerSecond: scene.framesPerSecond,
    rodColour: "orange",
    seed: index,
    poses: {
      every: Math.max(1, Math.round(scene.framesPerSecond / posesPerSecond)),
      late: Math.round((scene.framesPerSecond * posesLate) / 1000),
    },
    station,
  };
  const told = (await runInChromium({ client, clipPath: null, description: job }, () => undefined)) as
    | {
        readonly ok: true;
        readonly report: DemoAnswer;
        readonly pace: { readonly frames: number; readonly seconds: number };
      }
    | { readonly ok: false; readonly why: string };
  if (!told.ok) throw new Error(told.why);
  return { answer: told.report, frames: told.pace.frames, seconds: told.pace.seconds };
}
