import { Worker } from "node:worker_threads";
import type { Answer, Task } from "./session-worker.ts";

/** Measures all of them on so many workers; answers in the order of the tasks. */
export async function measureSessions(
  tasks: readonly Task[],
  workers: number,
  onDone: (done: number, answer: Answer) => void,
): Promise<readonly Answer[]> {
  const answers = new Map<Task, Answer>();
  const waiting = [...tasks];
  const work = async (): Promise<void> => {
    const worker = new Worker(new URL("session-worker.ts", import.meta.url));
    try {
      for (let task = waiting.shift(); task !== undefined; task = waiting.shift()) {
        const answer = await ask(worker, task);
        answers.set(task, answer);
        onDone(answers.size, answer);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, work));
  return tasks.flatMap((task) => answers.get(task) ?? []);
}

function ask(worker: Worker, task: Task): Promise<Answer> {
  return new Promise((resolve, reject) => {
    worker.once("message", (answer: Answer) => {
      worker.off("error", reject);
      resolve(answer);
    });
    worker.once("error", reject);
    worker.postMessage(task);
  });
}
