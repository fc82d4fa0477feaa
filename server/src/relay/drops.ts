import { limits } from "./limits.ts";

export type DropReason = "malformed" | "not-for-this-role" | "unknown-event" | "oversized" | "another-phone" | "failed";

export interface Drops {
  /** Counts a message that was dropped and tells the screens, at most every few seconds. */
  drop(reason: DropReason, event: string, why: string): void;
  counts(): Readonly<Record<DropReason, number>>;
}

/** @param tell Gets one sentence for the ground screens. */
export function countDrops(relayTime: () => number, tell: (sentence: string) => void): Drops {
  const counts: Record<DropReason, number> = {
    malformed: 0,
    "not-for-this-role": 0,
    "unknown-event": 0,
    oversized: 0,
    "another-phone": 0,
    failed: 0,
  };
  let untold = 0;
  let lastTold = -Infinity;
  return {
    drop(reason, event, why) {
      counts[reason] += 1;
      untold += 1;
      const now = relayTime();
      if (now - lastTold < limits.troubleEveryMs) return;
      const many = untold === 1 ? "a message" : `${untold} messages`;
      tell(`The relay dropped ${many}; the last was "${event}" (${reason}): ${why}`.slice(0, 300));
      untold = 0;
      lastTold = now;
    },
    counts: () => ({ ...counts }),
  };
}
