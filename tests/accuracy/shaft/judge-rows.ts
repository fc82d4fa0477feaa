import { onWorkers } from "../on-workers.ts";
import type { RowName } from "./rows.ts";
import { methods, type Tallies } from "./judge-scene.ts";
import type { Task } from "./row-worker.ts";
import { addTally, emptyTally } from "./tally.ts";

/** All scenes of all rows, on so many workers; the sum of tallies of each row. `told` is called as each scene ends. */
export async function judgeRows(
  tasks: readonly Task[],
  workers: number,
  told: (done: number, of: number, task: Task) => void,
): Promise<ReadonlyMap<RowName, Tallies>> {
  const rows = new Map<RowName, Tallies>();
  const script = new URL("row-worker.ts", import.meta.url);
  await onWorkers(script, tasks, workers, (tallies: Tallies, task: Task, done) => {
    const row = rows.get(task.name) ?? emptyTallies();
    for (const method of methods) addTally(row[method], tallies[method]);
    rows.set(task.name, row);
    told(done, tasks.length, task);
  });
  return rows;
}

const emptyTallies = (): Tallies => ({
  now: emptyTally(),
  lagged: emptyTally(),
  full: emptyTally(),
  HoughLinesP: emptyTally(),
});
