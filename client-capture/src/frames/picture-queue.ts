/** Pictures that have come and that nobody has taken yet. */
export interface PictureQueue<T> {
  put(picture: T): void;
  /** The oldest one that waits, or the next one to come; null after the end. One taker at a time. */
  take(): Promise<T | null>;
  /** No more will come; what waits is let go. */
  end(): void;
  waiting(): number;
  /** How many had to give way so far. */
  missed(): number;
}

/** At most `room` pictures wait: the oldest one gives way to a new one, is let go (`letGo` closes it) and counted. */
export function makePictureQueue<T>(room: number, letGo: (picture: T) => void): PictureQueue<T> {
  let waiting: T[] = [];
  let taker: ((picture: T | null) => void) | null = null;
  let ended = false;
  let missed = 0;
  return {
    put(picture) {
      if (ended) {
        letGo(picture);
        return;
      }
      if (taker !== null) {
        const give = taker;
        taker = null;
        give(picture);
        return;
      }
      waiting.push(picture);
      while (waiting.length > room) {
        const oldest = waiting.shift();
        if (oldest !== undefined) letGo(oldest);
        missed++;
      }
    },
    take() {
      const oldest = waiting.shift();
      if (oldest !== undefined) return Promise.resolve(oldest);
      if (ended) return Promise.resolve(null);
      return new Promise((resolve) => {
        taker = resolve;
      });
    },
    end() {
      if (ended) return;
      ended = true;
      waiting.forEach(letGo);
      waiting = [];
      taker?.(null);
      taker = null;
    },
    waiting: () => waiting.length,
    missed: () => missed,
  };
}
