import { parentPort } from "node:worker_threads";
import { measureFilmed, measureSimulated, type MeasuredFilm, type MeasuredSession } from "./measure-clock.ts";

/** A session to measure, sent to the worker. */
export interface Task {
  readonly how: "simulated" | "filmed";
  readonly index: number;
  /** Of filmed sessions: how many milliseconds after its picture a pose is there. */
  readonly posesLate: number;
}

export type Answer =
  | ({ readonly how: "simulated"; readonly index: number } & MeasuredSession)
  | ({ readonly how: "filmed"; readonly index: number } & MeasuredFilm)
  | { readonly how: "failed"; readonly index: number; readonly why: string };

const port = parentPort;
if (!port) throw new Error("session-worker.ts runs as a worker of run.run.ts");
port.on("message", (task: Task) => {
  void measure(task)
    .catch((error: unknown): Answer => ({ how: "failed", index: task.index, why: String(error) }))
    .then((answer) => {
      port.postMessage(answer);
    });
});

async function measure({ how, index, posesLate }: Task): Promise<Answer> {
  if (how === "simulated") return { how, index, ...measureSimulated(index) };
  return { how, index, ...(await measureFilmed(index, posesLate)) };
}
