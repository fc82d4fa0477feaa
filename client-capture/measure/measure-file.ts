import { readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import type { ClipReport } from "../src/pipeline/clip-report.ts";
import type { Thinning } from "../src/pipeline/thinning.ts";
import { clipTrouble } from "./clip-trouble.ts";
import { runInChromium } from "./run-in-chromium.ts";

const client = join(import.meta.dirname, "../../build/client-capture");

/** How fast it went: frames measured, seconds for all of them, frames that failed, mean milliseconds of the two slow stages. */
export interface Pace {
  readonly frames: number;
  readonly seconds: number;
  readonly failed: number;
  readonly millisecondsPerPose: number;
  readonly millisecondsPerShaft: number;
}

export interface MeasuredFile {
  readonly report: ClipReport;
  readonly pace: Pace;
}

/**
 * Measures a clip with the built client in a headless Chromium. `stationPath` null: uncalibrated; `thinning`: only some of its pictures, at a faster pace.
 * @throws Error with a sentence where the clip or the station cannot be read.
 */
export async function measureFile(
  clipPath: string,
  stationPath: string | null,
  onMessage: (text: string) => void,
  thinning: Thinning | null = null,
): Promise<MeasuredFile> {
  const trouble = await clipTrouble(clipPath);
  if (trouble !== null) throw new Error(trouble);
  const station = stationPath === null ? null : await readStation(stationPath);
  const description = { kind: "clip", clip: basename(clipPath), station, thinning };
  const answer = (await runInChromium({ client, clipPath, description }, onMessage)) as
    ({ readonly ok: true } & MeasuredFile) | { readonly ok: false; readonly why: string };
  if (!answer.ok) throw new Error(`${basename(clipPath)}: ${answer.why}`);
  return answer;
}

/** The file's JSON; the page judges what is in it. */
async function readStation(path: string): Promise<unknown> {
  const text = await readFile(path, "utf8").catch(() => {
    throw new Error(`There is no station file ${path} that can be read: check the path.`);
  });
  try {
    return JSON.parse(text) as unknown;
  } catch {
    throw new Error(`${path} is not JSON: docs/station-file.md shows what a station file looks like.`);
  }
}
