import type { Picture } from "../picture/picture.ts";
import type { FromWatchWorker, ToWatchWorker } from "../workers/watch-messages.ts";

export type WatchAnswer = NonNullable<FromWatchWorker["told"]>;

/** The watch over the sticks in a worker of its own, so that it never holds up a picture that is being measured. */
export interface WatchClient {
  watch(station: Omit<Extract<ToWatchWorker, { do: "watch" }>, "do">): void;
  /** Null where nothing can be said. */
  look(picture: Picture): Promise<WatchAnswer | null>;
}

/** The worker is started with the first station. */
export function startWatchClient(): WatchClient {
  let worker: Worker | null = null;
  let nextId = 0;
  const waiting = new Map<number, (answer: WatchAnswer | null) => void>();
  const start = (): Worker => {
    const started = new Worker(new URL("../workers/watch.worker.ts", import.meta.url), {
      type: "module",
      name: "watch",
    });
    started.onmessage = ({ data }: MessageEvent<FromWatchWorker>) => {
      waiting.get(data.id)?.(data.told);
      waiting.delete(data.id);
    };
    started.onerror = () => {
      for (const resolve of waiting.values()) resolve(null);
      waiting.clear();
    };
    return started;
  };
  const post = (message: ToWatchWorker): void => {
    worker ??= start();
    worker.postMessage(message);
  };
  return {
    watch(station) {
      post({ do: "watch", ...station });
    },
    look: (picture) =>
      new Promise((resolve) => {
        const id = nextId++;
        waiting.set(id, resolve);
        post({ do: "look", id, picture });
      }),
  };
}
