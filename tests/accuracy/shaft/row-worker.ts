import { parentPort } from "node:worker_threads";
import { effortOf, sceneOfRow, type RowName } from "./rows.ts";
import { loadHoughFinder } from "./hough-lines.ts";
import { judgeScene } from "./judge-scene.ts";

/** A scene to judge, sent to the worker; the answer is its tallies. */
export interface Task {
  readonly name: RowName;
  readonly seed: number;
}

const port = parentPort;
if (!port) throw new Error("row-worker.ts runs as a worker of run.run.ts");
const hough = await loadHoughFinder();
port.on("message", ({ name, seed }: Task) => {
  const tallies = judgeScene(sceneOfRow(name, seed), seed, {
    hough,
    clock: () => performance.now(),
    mostFrames: Infinity,
    effort: effortOf(name),
  });
  port.postMessage(tallies);
});
