import { mkdir, readFile, writeFile } from "node:fs/promises";
import { basename, dirname, join, resolve } from "node:path";
import { parseArgs } from "node:util";
import { clipTrouble } from "./clip-trouble.ts";
import { runInChromium } from "./run-in-chromium.ts";

/** `npm run measure -- CLIP.mp4 --out FILE.json`: the phone's own pipeline on a recorded clip. */
const usage = "Usage: npm run measure -- CLIP.mp4 --out FILE.json [--station FILE.json]";
const client = join(import.meta.dirname, "../../build/client-capture");

interface Pace {
  readonly frames: number;
  readonly seconds: number;
  readonly failed: number;
  readonly millisecondsPerPose: number;
  readonly millisecondsPerShaft: number;
}

type Answer =
  { readonly ok: true; readonly report: unknown; readonly pace: Pace } | { readonly ok: false; readonly why: string };

async function measure(): Promise<string> {
  const { clipPath, out, stationPath } = readArguments();
  const trouble = await clipTrouble(clipPath);
  if (trouble !== null) throw new Error(trouble);
  const station = stationPath === null ? null : await readStation(stationPath);
  const job = { client, clipPath, description: { kind: "clip", clip: basename(clipPath), station } };
  const answer = (await runInChromium(job, (text) => {
    process.stderr.write(`${text}\n`);
  })) as Answer;
  if (!answer.ok) throw new Error(`${basename(clipPath)}: ${answer.why}`);
  await mkdir(dirname(out), { recursive: true });
  await writeFile(out, `${JSON.stringify(answer.report)}\n`);
  return summary(answer.pace, out);
}

/** The file's JSON; the page judges what is in it. */
async function readStation(path: string): Promise<unknown> {
  const text = await readFile(path, "utf8").catch(() => {
    throw new Error(`There is no station file ${path} that can be read: check the path.`);
  });
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new Error(`${path} is not JSON: export the station from the phone's page again.`);
  }
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
