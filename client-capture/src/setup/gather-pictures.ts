/** Whoever walks through the picture while so many are gathered leaves no trace in their middle. */
const wanted = 10;
/** Milliseconds of the source's clock between two of them; a clip may be short. */
const everyMs = { live: 400, clip: 100 } as const;

export interface Gathering {
  /** Hears of every measured picture, by its time on the source's clock; true once the last one is kept. Rejects where one cannot be kept. */
  onPicture(t: number): Promise<boolean>;
}

/** Keeps about ten pictures some time apart. `keep`: keeps the newest one; `onCount` hears how many are kept, and of how many. */
export function gatherPictures(
  pace: keyof typeof everyMs,
  keep: (first: boolean) => Promise<number>,
  onCount: (kept: number, of: number) => void,
): Gathering {
  let count = 0;
  let keptAt: number | null = null;
  let busy = false;
  return {
    async onPicture(t) {
      // A film that is played over and over starts its clock anew.
      if (busy || count >= wanted || (keptAt !== null && Math.abs(t - keptAt) < everyMs[pace])) return false;
      busy = true;
      keptAt = t;
      try {
        count = await keep(count === 0);
      } finally {
        busy = false;
      }
      onCount(count, wanted);
      return count >= wanted;
    },
  };
}
