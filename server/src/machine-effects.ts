import { randomBytes } from "node:crypto";
import os from "node:os";
import { performance } from "node:perf_hooks";
import type { Effects } from "./effects.ts";
import { lanAddresses } from "./tls/lan-addresses.ts";

/** The machine itself. Relay time is the monotonic clock set to the epoch once: a corrected wall clock does not move it. */
export const machineEffects: Effects = {
  relayTime: () => performance.timeOrigin + performance.now(),
  today: () => new Date(),
  randomBytes: (length) => randomBytes(length),
  addresses: () => lanAddresses(os.networkInterfaces()),
  hostName: () => os.hostname(),
};
