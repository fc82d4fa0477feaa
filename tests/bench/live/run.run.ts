import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { usualShow } from "../../browser/demo-golfer/demo-show.ts";
import { renderY4m } from "../../browser/demo-golfer/render-y4m.ts";
import { watchLive } from "./watch-live.ts";

/**
 * npm run bench:live. The real page with the fake camera at 60 pictures a second of 720 x 1280: the share of the pictures that the track delivered
 * to which the tracker gave an answer, while setting up (the picture is shown) and while practising. Exit code 1 where the goal is missed.
 */
const goal = 0.95;
const { values } = parseArgs({
  options: { film: { type: "string" }, seconds: { type: "string", default: "20" } },
});

const folder = await mkdtemp(join(tmpdir(), "overcue-live-"));
try {
  const film = values.film ?? (await renderFilm(join(folder, "live.y4m")));
  const watched = await watchLive(film, Number(values.seconds));
  const lines = watched.map(({ screen, delivered, looked, missed, tracked, poses }) =>
    [
      `${screen}: ${looked} of ${delivered} pictures answered, ${share(looked / delivered)} (goal ${share(goal)})`,
      `the phone says ${missed} missed`,
      `shaft tracked ${share(tracked)} of the times asked`,
      `${poses.toFixed(0)} poses a second`,
    ].join("; "),
  );
  for (const line of lines) console.log(line);
  const met = watched.every(({ looked, delivered }) => looked >= goal * delivered);
  console.log(`bench:live: ${met ? "all goals met" : "a goal is MISSED"}`);
  process.exitCode = met ? 0 : 1;
} finally {
  await rm(folder, { recursive: true, force: true });
}

async function renderFilm(file: string): Promise<string> {
  console.log("Rendering the film: two minutes or so.");
  await renderY4m(file, { ...usualShow, width: 720, height: 1280, framesPerSecond: 60, rodBeyondButt: 0.5 });
  return file;
}

function share(part: number): string {
  return `${(100 * part).toFixed(1)} %`;
}
