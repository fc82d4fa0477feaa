import "@overcue/shared-geometry/wire/no-run-time-code";
import { readAtOnce } from "@overcue/shared-geometry/rolling-shutter";
import type { StationSettings } from "@overcue/shared-geometry/station";
import { openClip } from "../frames/clip-source.ts";
import type { FrameSource } from "../frames/frame-source.ts";
import { thinnedSource } from "../frames/thinned-source.ts";
import { startMeasureClient, type MeasureClient } from "../measuring/measure-client.ts";
import type { Configuration } from "../pipeline/configuration.ts";
import { startPoseClient } from "../pose/pose-client.ts";
import { clipConfiguration } from "./clip-configuration.ts";
import { clipReport } from "./clip-report.ts";
import { findStation } from "./find-station.ts";
import type { Job, PosePace } from "./job.ts";
import { measureClip, type MeasuredClip } from "./measure-clip.ts";
import { openDemoJob } from "./measure-demo.ts";

/** The page behind `npm run measure`: fetches its job from the loopback server that serves it, and posts the answer back. */
const patience = 120_000;

interface Opened {
  readonly source: FrameSource;
  readonly configuration: Configuration;
  readonly poses: PosePace;
  readonly report: (measured: MeasuredClip) => unknown;
}

async function openJob(job: Exclude<Job, { kind: "picture" }>, measure: MeasureClient): Promise<Opened> {
  if (job.kind === "demo") {
    const { source, emptyPlace, answer } = openDemoJob(job);
    const settings: StationSettings = job.plan.golfer.station;
    const known: Configuration = { settings, camera: job.camera, calibration: "demo", shutter: readAtOnce };
    const configuration =
      job.station === "known"
        ? known
        : { ...(await findStation(emptyPlace, source.info, measure, settings)), shutter: readAtOnce };
    return {
      source,
      configuration,
      poses: job.poses,
      report: (measured) => answer(measured.answer, configuration.camera),
    };
  }
  const clip = await openClip(await (await fetch("/clip")).blob());
  const source = job.thinning === null ? clip : thinnedSource(clip, job.thinning);
  const configuration = clipConfiguration(job.station, source.info);
  return {
    source,
    configuration,
    poses: { every: 1, late: 0 },
    report: (measured) =>
      clipReport(job.clip, source.info, measured, configuration.settings.handed, configuration.camera !== null),
  };
}

async function run(): Promise<unknown> {
  const job = (await (await fetch("/job")).json()) as Job;
  return job.kind === "picture" ? await findPose() : await measure(job);
}

/** Two pictures a second apart: the model finds the person in the first and follows it into the second. */
async function findPose(): Promise<unknown> {
  const file = await (await fetch("/clip")).blob();
  const pose = await startPoseClient({ model: "full", delegate: "CPU", warmUp: false, patience });
  await pose.find(await createImageBitmap(file), 0, 0);
  const picture = await createImageBitmap(file);
  const { width, height } = picture;
  const { body } = await pose.find(picture, 0, 1000);
  return { ok: true, width, height, landmarks: body?.landmarks ?? null };
}

async function measure(job: Exclude<Job, { kind: "picture" }>): Promise<unknown> {
  const measure = startMeasureClient();
  const { source, configuration, poses, report } = await openJob(job, measure);
  const pose = await startPoseClient({ model: "full", delegate: "CPU", warmUp: false, patience });
  measure.start(configuration, job.kind === "demo" ? "show" : "clip");
  const started = performance.now();
  const tellProgress = (done: number): void => {
    if (done % 100 === 0) console.info(`${String(done)} frames`);
  };
  const measured = await measureClip(source, pose, measure, tellProgress, poses);
  const seconds = (performance.now() - started) / 1000;
  for (const failure of measured.failures.slice(0, 5)) console.info(failure);
  const answer = report(measured);
  source.close();
  return {
    ok: true,
    report: answer,
    pace: {
      frames: measured.frames.length,
      seconds,
      failed: measured.failures.length,
      millisecondsPerPose: measured.millisecondsPerPose,
      millisecondsPerShaft: measured.millisecondsPerShaft,
    },
  };
}

const answer = await run().catch((error: unknown) => ({
  ok: false,
  why: error instanceof Error ? error.message : String(error),
}));
await fetch("/answer", { method: "POST", body: JSON.stringify(answer) });
export {};
