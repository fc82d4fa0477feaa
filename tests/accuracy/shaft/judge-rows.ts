import { onWorkers } from "../on-workers.ts";
import { conditionOf, type RowName } from "./rows.ts";
import { methods, type Tallies } from "./judge-scene.ts";
import type { Answer, Task } from "./row-worker.ts";
import { addTally, emptyTally } from "./tally.ts";

/** A scene to judge for one row. */
export interface RowScene {
  readonly name: RowName;
  readonly seed: number;
}

/** All scenes of all rows, on so many workers; the sum of tallies of each row. Rows of the same scenes share their pictures. `told` is called as each scene ends. */
export async function judgeRows(
  scenes: readonly RowScene[],
  workers: number,
  told: (done: number, of: number, task: Task) => void,
): Promise<ReadonlyMap<RowName, Tallies>> {
  const rows = new Map<RowName, Tallies>();
  const script = new URL("row-worker.ts", import.meta.url);
  const tasks = sharedTasks(scenes);
  await onWorkers(script, tasks, workers, (answer: Answer, task: Task, done) => {
    for (const [name, tallies] of answer) {
      const row = rows.get(name) ?? emptyTallies();
      for (const method of methods) addTally(row[method], tallies[method]);
      rows.set(name, row);
    }
    told(done, tasks.length, task);
  });
  return rows;
}

function sharedTasks(scenes: readonly RowScene[]): readonly Task[] {
  const shared = Map.groupBy(scenes, ({ name, seed }) => `${conditionOf(name)} ${seed}`);
  return [...shared.values()].flatMap((rows) => {
    const [first] = rows;
    return first === undefined ? [] : [{ names: rows.map(({ name }) => name), seed: first.seed }];
  });
}

const emptyTallies = (): Tallies => ({
  now: emptyTally(),
  lagged: emptyTally(),
  full: emptyTally(),
  HoughLinesP: emptyTally(),
});
