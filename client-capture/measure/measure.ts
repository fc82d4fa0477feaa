import { mkdir, writeFile } from "node:fs/promises";
import { dirname, resolve } from "node:path";
import { parseArgs } from "node:util";
import { measureFile, type Pace } from "./measure-file.ts";

/** `npm run measure -- CLIP.mp4 --out FILE.json`: the phone's own pipeline on a recorded clip. */
const usage = "Usage: npm run measure -- CLIP.mp4 --out FILE.json [--station FILE.json]";

async function measure(): Promise<string> {
  const { clipPath, out, stationPath } = readArguments();
  const { report, pace } = await measureFile(clipPath, stationPath, (text) => {
    process.stderr.write(`${text}\n`);
  });
  await mkdir(dirname(out), { recursive: true });
  await writeFile(out, `${JSON.stringify(report)}\n`);
  return summary(pace, out);
}

function readArguments(): { clipPath: string; out: string; stationPath: string | null } {
  const { values, positionals } = parseArguments();
  const [clip, ...more] = positionals;
  if (clip === undefined || more.length > 0 || values.out === undefined) throw new Error(usage);
  // npm runs scripts in the project's folder and says in INIT_CWD where the user stood.
  const from = process.env["INIT_CWD"] ?? process.cwd();
  return {
    clipPath: resolve(from, clip),
    out: resolve(from, values.out),
    stationPath: values.station === undefined ? null : resolve(from, values.station),
  };
}

function parseArguments() {
  try {
    return parseArgs({ allowPositionals: true, options: { out: { type: "string" }, station: { type: "string" } } });
  } catch {
    throw new Error(usage);
  }
}

function summary({ frames, seconds, failed, millisecondsPerPose, millisecondsPerShaft }: Pace, out: string): string {
  const pace = `${(frames / seconds).toFixed(1)} a second (pose ${millisecondsPerPose.toFixed(0)} ms, shaft ${millisecondsPerShaft.toFixed(0)} ms)`;
  return `${String(frames)} frames in ${seconds.toFixed(1)} s, ${pace}, ${String(failed)} failed: ${out}`;
}

try {
  process.stderr.write(`${await measure()}\n`);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
}
