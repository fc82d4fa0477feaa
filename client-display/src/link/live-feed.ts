import type { Estimate } from "@overcue/shared-geometry/wire/estimate";

/** The newest estimate, for painters. It never goes through React: whoever draws subscribes or asks at each paint. */
export interface LiveFeed {
  readonly latest: () => Estimate | null;
  readonly push: (estimate: Estimate) => void;
  readonly clear: () => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export function createLiveFeed(): LiveFeed {
  let latest: Estimate | null = null;
  const listeners = new Set<() => void>();
  const tell = (): void => {
    for (const listener of listeners) listener();
  };
  return {
    latest: () => latest,
    push: (estimate) => {
      // The network may deliver an older one late: fresh beats complete. A phone that starts anew counts from 0 again.
      if (latest !== null && estimate.sequence <= latest.sequence && estimate.capturedAt <= latest.capturedAt) return;
      latest = estimate;
      tell();
    },
    clear: () => {
      latest = null;
      tell();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
