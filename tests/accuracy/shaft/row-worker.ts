import { parentPort } from "node:worker_threads";
import { codeAsH264 } from "../../scenes/sensor/code-as-h264.ts";
import { makeFilm, type Film } from "../../scenes/film.ts";
import { keepShots } from "../../scenes/keep-shots.ts";
import { bitsOf, effortOf, isTapped, sceneOfRow, type RowName } from "./rows.ts";
import { loadHoughFinder } from "./hough-lines.ts";
import { judgeScene, type Tallies } from "./judge-scene.ts";
import { tapRod } from "./tap-rod.ts";

/** A scene to judge, sent to the worker, for each of the rows that show it; the answer is its tallies in each. */
export interface Task {
  readonly names: readonly RowName[];
  readonly seed: number;
}
export type Answer = readonly (readonly [RowName, Tallies])[];

const port = parentPort;
if (!port) throw new Error("row-worker.ts runs as a worker of run.run.ts");
const hough = await loadHoughFinder();
port.on("message", (task: Task) => {
  void judgeRowsOf(task).then((answer) => {
    port.postMessage(answer);
  });
});

async function judgeRowsOf({ names, seed }: Task): Promise<Answer> {
  const [first] = names;
  if (first === undefined) return [];
  const film = makeFilm(sceneOfRow(first, seed), seed);
  // One tap is a picture more.
  const shown = names.length > 1 || isTapped(first) ? keepShots(film) : film;
  const answer: [RowName, Tallies][] = [];
  for (const name of names) answer.push([name, await judge(name, seed, shown)]);
  return answer;
}

async function judge(name: RowName, seed: number, film: Film): Promise<Tallies> {
  const scene = sceneOfRow(name, seed);
  const { width, height } = scene.camera;
  const bitsPerSecond = bitsOf(name);
  const settings = { width, height, framesPerSecond: scene.framesPerSecond };
  return judgeScene(scene, seed, {
    hough,
    clock: () => performance.now(),
    mostFrames: Infinity,
    effort: effortOf(name),
    rodColour: isTapped(name) ? tapRod(scene, seed, film) : null,
    film,
    ...(bitsPerSecond === null ? {} : { through: (frames) => codeAsH264(frames, { ...settings, bitsPerSecond }) }),
  });
}
