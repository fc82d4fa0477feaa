import { parentPort } from "node:worker_threads";
import { codeAsH264 } from "../../scenes/sensor/code-as-h264.ts";
import { bitsOf, effortOf, isTapped, sceneOfRow, type RowName } from "./rows.ts";
import { loadHoughFinder } from "./hough-lines.ts";
import { judgeScene, type Tallies } from "./judge-scene.ts";
import { tapRod } from "./tap-rod.ts";

/** A scene to judge, sent to the worker; the answer is its tallies. */
export interface Task {
  readonly name: RowName;
  readonly seed: number;
}

const port = parentPort;
if (!port) throw new Error("row-worker.ts runs as a worker of run.run.ts");
const hough = await loadHoughFinder();
port.on("message", (task: Task) => {
  void judge(task).then((tallies) => {
    port.postMessage(tallies);
  });
});

async function judge({ name, seed }: Task): Promise<Tallies> {
  const scene = sceneOfRow(name, seed);
  const { width, height } = scene.camera;
  const bitsPerSecond = bitsOf(name);
  const settings = { width, height, framesPerSecond: scene.framesPerSecond };
  return judgeScene(scene, seed, {
    hough,
    clock: () => performance.now(),
    mostFrames: Infinity,
    effort: effortOf(name),
    rodColour: isTapped(name) ? tapRod(scene, seed) : null,
    ...(bitsPerSecond === null ? {} : { through: (frames) => codeAsH264(frames, { ...settings, bitsPerSecond }) }),
  });
}
