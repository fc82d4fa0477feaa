import { parentPort } from "node:worker_threads";
import { effortOf, isTapped, sceneOfRow, type RowName } from "./rows.ts";
import { loadHoughFinder } from "./hough-lines.ts";
import { judgeScene } from "./judge-scene.ts";
import { tapRod } from "./tap-rod.ts";

/** A scene to judge, sent to the worker; the answer is its tallies. */
export interface Task {
  readonly name: RowName;
  readonly seed: number;
}

const port = parentPort;
if (!port) throw new Error("row-worker.ts runs as a worker of run.run.ts");
const hough = await loadHoughFinder();
port.on("message", ({ name, seed }: Task) => {
  const scene = sceneOfRow(name, seed);
  const tallies = judgeScene(scene, seed, {
    hough,
    clock: () => performance.now(),
    mostFrames: Infinity,
    effort: effortOf(name),
    rodColour: isTapped(name) ? tapRod(scene, seed) : null,
  });
  port.postMessage(tallies);
});
