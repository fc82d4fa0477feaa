import type { ToRelay } from "@overcue/shared-geometry/wire/events";
import type { Socket } from "socket.io-client";
import { clockOffset, type ClockOffset, type ClockSample } from "./clock-offset.ts";

export interface RelayClock {
  /** The relay's time now in milliseconds, or null before the first answer. */
  readonly relayNow: () => number | null;
  readonly offset: () => ClockOffset | null;
  readonly stop: () => void;
}

const samplesKept = 12;
const askEveryMs = 5_000;
const firstAsks = 4;

/** Asks the relay for its time now and then, a few times at once after each connect. */
export function keepClock(
  socket: Socket<Record<string, (message: unknown) => void>, ToRelay>,
  now: () => number,
): RelayClock {
  let samples: readonly ClockSample[] = [];
  const ask = (more: number): void => {
    if (!socket.connected) return;
    const asked = now();
    socket.emit("clock", (relayTime: unknown) => {
      if (typeof relayTime !== "number" || !Number.isFinite(relayTime)) return;
      samples = [...samples, { asked, answered: now(), relayTime }].slice(-samplesKept);
      if (more > 0) ask(more - 1);
    });
  };
  socket.on("connect", () => {
    // A relay that was started anew may run on another clock.
    samples = [];
    ask(firstAsks);
  });
  const timer = setInterval(() => {
    ask(0);
  }, askEveryMs);
  const offset = (): ClockOffset | null => clockOffset(samples, now());
  return {
    offset,
    relayNow: () => {
      const known = offset();
      return known === null ? null : now() + known.offset;
    },
    stop: () => {
      clearInterval(timer);
    },
  };
}
