import { defaultStation } from "@overcue/shared-geometry/default-station";
import { openClip } from "../frames/clip-source.ts";
import { startMeasureClient } from "../measuring/measure-client.ts";
import { startPoseClient } from "../pose/pose-client.ts";
import { clipReport } from "./clip-report.ts";
import { measureClip } from "./measure-clip.ts";

/** The page behind `npm run measure`: fetches the job and the clip from the loopback server that serves it, and posts the answer back. */
const patience = 120_000;

async function run(): Promise<unknown> {
  const job = (await (await fetch("/job")).json()) as { readonly clip: string };
  const file = await (await fetch("/clip")).blob();
  const source = await openClip(file);
  const settings = defaultStation("7-iron", "right");
  const pose = await startPoseClient({ model: "full", delegate: "CPU", warmUp: false, patience });
  const measure = startMeasureClient();
  measure.start({ settings, camera: null, calibration: "uncalibrated" }, true);
  const started = performance.now();
  const measured = await measureClip(source, pose, measure, (done) => {
    if (done % 100 === 0) console.info(`${String(done)} frames`);
  });
  const seconds = (performance.now() - started) / 1000;
  source.close();
  for (const failure of measured.failures.slice(0, 5)) console.warn(failure);
  return {
    ok: true,
    report: clipReport(job.clip, source.info, measured, settings.handed, false),
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
