import { once } from "node:events";
import { Worker } from "node:worker_threads";
import type { ConditionName } from "../../scenes/conditions.ts";
import { methods, type Tallies } from "./judge-scene.ts";
import type { Task } from "./row-worker.ts";
import { addTally, emptyTally } from "./tally.ts";

/** All scenes of all rows, on so many workers; the sum of tallies of each row. `told` is called as each scene ends. */
export async function judgeRows(
  tasks: readonly Task[],
  workers: number,
  told: (done: number, of: number, task: Task) => void,
): Promise<ReadonlyMap<ConditionName, Tallies>> {
  const rows = new Map<ConditionName, Tallies>();
  const waiting = [...tasks];
  let done = 0;
  const work = async (): Promise<void> => {
    const worker = new Worker(new URL("row-worker.ts", import.meta.url));
    try {
      for (let task = waiting.shift(); task !== undefined; task = waiting.shift()) {
        worker.postMessage(task);
        const [tallies] = (await once(worker, "message")) as [Tallies];
        const row = rows.get(task.name) ?? emptyTallies();
        for (const method of methods) addTally(row[method], tallies[method]);
        rows.set(task.name, row);
        done++;
        told(done, tasks.length, task);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: workers }, work));
  return rows;
}

const emptyTallies = (): Tallies => ({
  now: emptyTally(),
  lagged: emptyTally(),
  full: emptyTally(),
  HoughLinesP: emptyTally(),
});
