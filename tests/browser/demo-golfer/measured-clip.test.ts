import { mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isDeepStrictEqual } from "node:util";
import { afterAll, beforeAll, expect, it } from "vitest";
import { placesOf, usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";
import type { DemoCheckpoint } from "@overcue/client-capture/demo-motion/demo-truth";
import type { ClipReport } from "@overcue/client-capture/pipeline/clip-report";
import type { StationFile } from "@overcue/client-capture/setup/station-file";
import { bandAt } from "@overcue/shared-geometry/band-interval";
import type { Camera } from "@overcue/shared-geometry/camera";
import { project } from "@overcue/shared-geometry/camera-project";
import type { Point } from "@overcue/shared-geometry/point";
import type { ReadOuts } from "@overcue/shared-geometry/read-outs";
import { stationLines } from "@overcue/shared-geometry/station";
import { stickEnds } from "@overcue/shared-geometry/station-model";
import { measureFile } from "../../../client-capture/measure/measure-file.ts";
import { usualShow } from "./demo-show.ts";
import { openDemoPage } from "./open-demo-page.ts";
import { openShow } from "./play-show.ts";
import { trimMp4 } from "./trim-mp4.ts";

const settings = usualGolfer.station;
const flatToSteep = 0.5;
/** Small and few enough pictures for four measurements on a slow machine. */
const show = { ...usualShow, width: 480, height: 854, framesPerSecond: 20, camera: "demo", flatToSteep } as const;

let folder: string;
let truth: readonly DemoCheckpoint[];
let frames: number;
let report: ClipReport;
let uncalibrated: ClipReport;
let trimmed: ClipReport;
let stretched: ClipReport;

/** How many pictures a trimmed clip shows, of those that it carries. */
const left = 12;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-clip-"));
  const clip = join(folder, "rehearsal.mp4");
  const twice = join(folder, "twice.mp4");
  const station = join(folder, "station.json");
  const demo = await openDemoPage((bytes) => writeFile(clip, bytes));
  try {
    for (const times of [2, 1]) {
      await writeFile(station, JSON.stringify(stationFile(await openShow(demo.page, show))));
      const recorded = await demo.page.evaluate((often) => globalThis.demoPage?.record(often), times);
      frames = recorded?.frames ?? 0;
      if (times === 2) await rename(clip, twice);
    }
    truth = await demo.page.evaluate(() => globalThis.demoPage?.checkpoints() ?? []);
  } finally {
    await demo.close();
  }
  const end = join(folder, "end.mp4");
  await writeFile(end, trimMp4(await readFile(clip), (frames - left) / show.framesPerSecond));
  const measured = async (path: string, through: string | null): Promise<ClipReport> =>
    (await measureFile(path, through, () => undefined)).report;
  // Two at a time: one waits for its pose model while the other looks for the shaft.
  [report, uncalibrated] = await Promise.all([measured(clip, station), measured(clip, null)]);
  [stretched, trimmed] = await Promise.all([measured(twice, station), measured(end, null)]);
}, 600_000);
afterAll(() => rm(folder, { recursive: true, force: true }));

/** What somebody who reads the sticks' ends off the clip's picture to a pixel would write down. */
function stationFile(camera: Camera): StationFile {
  const seen = (end: Point<"world">): [number, number] => {
    const at = project(camera, end);
    if (at === null) throw new Error("a stick lies behind the lens");
    return [Math.round(at.x), Math.round(at.y)];
  };
  const sticks = stationLines.map((line) => {
    const { near, far } = stickEnds(line, settings, [0, 0, 0]);
    return { line, near: seen(near), far: seen(far) };
  });
  return { settings, sticks };
}

it("a recorded clip is measured from end to end: every picture of it, and its one rep", () => {
  expect(report.frames).toHaveLength(frames);
  expect(report.frames.every(({ t }, index) => Math.abs(t - index / show.framesPerSecond) < 0.002)).toBe(true);
  expect(report.reps).toHaveLength(1);
  expect(report.reps[0]).toMatchObject({ kind: "rehearsal", complete: true });
});

it.each(["with a station file", "without one"])(
  "the instants in the file lie within four of their stated errors of the true ones, %s",
  (how) => {
    const [rep] = how === "without one" ? uncalibrated.reps : report.reps;
    const dated = truth.flatMap(({ checkpoint, t }) => {
      const found = rep?.checkpoints[checkpoint];
      // Without depth takeaway is another instant (K5.3).
      if (found === undefined || (how === "without one" && checkpoint === "takeaway")) return [];
      return [{ checkpoint, off: found.t - t / 1000, sd: found.sdFrames / show.framesPerSecond }];
    });
    expect(dated.length).toBeGreaterThan(4);
    for (const { checkpoint, off, sd } of dated) expect(Math.abs(off), checkpoint).toBeLessThan(4 * sd);
  },
);

it("of a clip that was trimmed without coding it anew, only what it shows is measured, from time 0 on", () => {
  expect(trimmed.frames).toHaveLength(left);
  expect(trimmed.frames.every(({ t }, index) => Math.abs(t - index / show.framesPerSecond) < 0.002)).toBe(true);
});

it("K5.8 a clip that shows every picture twice is given one shaft for both while the golfer moves, and its rep passes its checkpoints when the plain clip's does", () => {
  expect(stretched.frames).toHaveLength(2 * frames);
  const [rep] = report.reps;
  const [again] = stretched.reps;
  const swung = { from: rep?.checkpoints.takeaway?.frame ?? NaN, to: rep?.checkpoints.impact?.frame ?? NaN };
  const pairs = stretched.frames.filter(
    ({ frame }) => frame % 2 === 0 && frame / 2 > swung.from && frame / 2 < swung.to,
  );
  const shared = pairs.filter(({ frame, shaft }) => isDeepStrictEqual(stretched.frames[frame + 1]?.shaft, shaft));
  expect(pairs.length).toBeGreaterThan(50);
  expect(shared.length / pairs.length).toBeGreaterThan(0.9);
  for (const checkpoint of ["shaft-level-back", "arm-level-back", "arm-level-down", "shaft-level-down"] as const) {
    const apart = (again?.checkpoints[checkpoint]?.t ?? NaN) - (rep?.checkpoints[checkpoint]?.t ?? NaN);
    expect(Math.abs(apart), checkpoint).toBeLessThan(0.5 / usualShow.framesPerSecond);
  }
});

it("without a station file the rep is found too, and nothing is read on the ground", () => {
  expect(uncalibrated.reps).toHaveLength(1);
  expect(JSON.stringify(uncalibrated.reps)).not.toContain("readOuts");
});

it("with a station file the rep tells where the club was, and never the wrong band", () => {
  const places = placesOf(flatToSteep);
  const read = (checkpoint: DemoCheckpoint["checkpoint"], point: "buttPoint" | "headPoint"): ReadOuts["buttPoint"] => {
    const readOuts = report.reps[0]?.checkpoints[checkpoint]?.readOuts;
    if (readOuts === undefined) throw new Error(`no read-outs at ${checkpoint}`);
    return readOuts[point];
  };
  const told = [
    { truth: places.headAtShaftLevelBack, reading: read("shaft-level-back", "headPoint") },
    { truth: places.buttBack, reading: read("arm-level-back", "buttPoint") },
    { truth: places.buttDown, reading: read("arm-level-down", "buttPoint") },
    { truth: places.headAtShaftLevelDown, reading: read("shaft-level-down", "headPoint") },
  ].flatMap(({ truth: y, reading }) => (reading.defined ? [{ truth: y, reading }] : []));
  expect(told.length).toBeGreaterThan(2);
  for (const { truth: y, reading } of told) {
    expect(Math.abs(reading.y - y)).toBeLessThan(4 * reading.sdY);
    expect(reading.band.decided ? reading.band.band : "unsure").toBeOneOf(["unsure", bandAt(y, settings)]);
  }
});
