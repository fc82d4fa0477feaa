import { readFile } from "node:fs/promises";
import { measureFile } from "../../../client-capture/measure/measure-file.ts";
import { countLabels, type ShaftLabel } from "../real-clip/count-labels.ts";
import { footage } from "../real-clip/footage.ts";

/** What a real clip came to, and whether each of its goals was met. */
export interface RealClipResult {
  readonly lines: readonly string[];
  readonly goals: number;
  readonly missed: readonly string[];
}

const skipped = (what: string): RealClipResult => ({
  lines: [`- ${what}: skipped, the footage is not beside this checkout (../shared/footage).`],
  goals: 0,
  missed: [],
});

/** The real clips that lie beside the checkout, measured by the phone's own pipeline in Chromium with the real pose model. */
export async function judgeRealClips(): Promise<readonly RealClipResult[]> {
  return [await judgeLabelledSwing(), await judgeEmptyHands()];
}

/** 18 frames read by eye (noise about 0.6 degrees median): all tracked, 17 within 3 degrees, median at most 1. */
async function judgeLabelledSwing(): Promise<RealClipResult> {
  const clip = footage("slow-swing-354x492.mp4");
  const labelFile = footage("slow-swing-354x492.labels.json");
  if (clip === null || labelFile === null) return skipped("labelled real swing");
  const { shaft } = JSON.parse(await readFile(labelFile, "utf8")) as { readonly shaft: readonly ShaftLabel[] };
  const { report } = await measureFile(clip, null, () => undefined);
  const counted = countLabels(report, shaft, 3);
  const tracked = counted.filter(({ stated }) => stated?.status === "tracked").length;
  const hits = counted.filter(({ hit }) => hit).length;
  const misses = counted.map(({ missDegrees }) => Math.abs(missDegrees ?? 180)).toSorted((a, b) => a - b);
  const median = misses[Math.floor((misses.length - 1) / 2)] ?? 180;
  const told = `labelled real swing: ${tracked} of ${counted.length} labels tracked (goal: all), ${hits} within 3 degrees (goal: 17), median ${median.toFixed(2)} degrees (goal: 1.00)`;
  return {
    lines: [`- ${told}`],
    goals: 3,
    missed: [
      ...(tracked < counted.length ? ["labelled real swing: not all labels tracked"] : []),
      ...(hits < 17 ? [`labelled real swing: ${hits} within 3 degrees, goal 17`] : []),
      ...(median > 1 ? [`labelled real swing: median ${median.toFixed(2)}, goal 1.00`] : []),
    ],
  };
}

/** A person squatting with nothing in the hands: lost in at least 97 of 100 frames. */
async function judgeEmptyHands(): Promise<RealClipResult> {
  const clip = footage("pose_squats.mp4");
  if (clip === null) return skipped("real person with empty hands");
  const { report } = await measureFile(clip, null, () => undefined);
  const lost = report.frames.filter(({ shaft }) => shaft === null || shaft.status === "lost").length;
  const share = lost / Math.max(1, report.frames.length);
  const told = `real person with empty hands: lost in ${(100 * share).toFixed(1)} % of ${report.frames.length} frames (goal: 97.0 %)`;
  return { lines: [`- ${told}`], goals: 1, missed: share < 0.97 ? [told] : [] };
}
