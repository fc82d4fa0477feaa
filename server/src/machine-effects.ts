import { randomBytes } from "node:crypto";
import os from "node:os";
import { performance } from "node:perf_hooks";
import type { Effects } from "./effects.ts";
import { makeRelayClock } from "./relay-clock.ts";
import { lanAddresses } from "./tls/lan-addresses.ts";

/** The machine itself. */
export const machineEffects: Effects = {
  relayTime: makeRelayClock(
    () => performance.timeOrigin + performance.now(),
    () => Date.now(),
  ),
  today: () => new Date(),
  randomBytes: (length) => randomBytes(length),
  addresses: () => lanAddresses(os.networkInterfaces()),
  hostName: () => os.hostname(),
};
