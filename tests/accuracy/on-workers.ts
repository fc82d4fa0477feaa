import { once } from "node:events";
import { Worker } from "node:worker_threads";

/**
 * Sends each task to a worker of that script as one falls free, `workers` at most, and tells of each answer as it comes. The answers, in the order of the
 * tasks; rejects where a worker breaks.
 */
export async function onWorkers<Task, Answer>(
  script: URL,
  tasks: readonly Task[],
  workers: number,
  onAnswer: (answer: Answer, task: Task, done: number) => void,
): Promise<readonly Answer[]> {
  const answers = new Map<Task, Answer>();
  const waiting = [...tasks];
  const work = async (): Promise<void> => {
    const worker = new Worker(script);
    try {
      for (let task = waiting.shift(); task !== undefined; task = waiting.shift()) {
        worker.postMessage(task);
        const [answer] = (await once(worker, "message")) as [Answer];
        answers.set(task, answer);
        onAnswer(answer, task, answers.size);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(workers, tasks.length) }, work));
  return tasks.flatMap((task) => answers.get(task) ?? []);
}
