import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { setTimeout as wait } from "node:timers/promises";
import WebSocket from "ws";
import { joinRelay, type Joined } from "../relay/join-relay.ts";
import { runProgram } from "../relay/run-program.ts";
import { sampleEstimate, sampleRep } from "../relay/sample-messages.ts";
import { openOutbox } from "./outbox.ts";
import { percentilesOf, type Percentiles } from "./percentiles.ts";
import { repIdsInBook, startRelayProcess } from "./relay-process.ts";

export interface LoadSettings {
  readonly seconds: number;
  readonly estimatesPerSecond: number;
  readonly displays: number;
  readonly coaches: number;
  readonly secondsPerRep: number;
  /** The phone's connection is cut this often, seconds. */
  readonly secondsPerCut: number;
}

export interface LoadResult {
  /** Milliseconds from sending to arrival, all receivers together. */
  readonly relay: Percentiles;
  readonly bare: Percentiles;
  readonly estimatesSent: number;
  /** Of all arrivals that there could have been. */
  readonly deliveredShare: number;
  /** Estimates that came back to the phone: none may. */
  readonly echoed: number;
  readonly cuts: number;
  readonly repsSent: number;
  readonly repsAcknowledged: number;
  /** Ids in the book that differ from the ids sent, missing and doubled ones. */
  readonly repsMissing: number;
  readonly repsDoubled: number;
  /** The relay's memory each ten seconds (or at start and end), MiB. Empty where the system does not say. */
  readonly residentMebibytes: readonly number[];
}

/** One phone, screens and coaches on loopback for a bounded time, the bare fan-out beside it under the same load. */
export async function runRelayLoad(settings: LoadSettings): Promise<LoadResult> {
  const dataFolder = await mkdtemp(join(tmpdir(), "overcue-load-"));
  const relay = await startRelayProcess(dataFolder);
  const bare = await openBare(settings.displays + settings.coaches);
  const joining = { secret: relay.secret, reconnection: true };

  const phone = await joinRelay(relay.origin, "capture", joining);
  const screens: Joined[] = [];
  for (let i = 0; i < settings.displays; i += 1) screens.push(await joinRelay(relay.origin, "display", joining));
  for (let i = 0; i < settings.coaches; i += 1) screens.push(await joinRelay(relay.origin, "coach", joining));
  const relayLatencies: number[] = [];
  let echoed = 0;
  phone.socket.on("estimate", () => (echoed += 1));
  for (const { socket } of screens) {
    socket.on("estimate", ({ capturedAt }) => relayLatencies.push(performance.now() - capturedAt));
  }

  const outbox = openOutbox(phone.socket);
  const period = 1000 / settings.estimatesPerSecond;
  const repEvery = Math.round(settings.secondsPerRep * settings.estimatesPerSecond);
  const cutEvery = Math.round(settings.secondsPerCut * settings.estimatesPerSecond);
  const total = Math.round(settings.seconds * settings.estimatesPerSecond);
  const memory: number[] = [];
  const start = performance.now();
  let cuts = 0;
  let sent = 0;
  for (let tick = 0; tick < total; tick += 1) {
    if (tick % (10 * settings.estimatesPerSecond) === 0) await noteMemory();
    // Both are sent half a period apart, so that neither waits for the other.
    await wait(Math.max(0, start + tick * period - performance.now()));
    if (phone.socket.connected) {
      phone.socket.emit("estimate", sampleEstimate(tick, performance.now()));
      sent += 1;
    }
    if (tick % repEvery === 0) outbox.add(sampleRep(undefined, 200));
    if (tick % cutEvery === cutEvery - 1) {
      cuts += 1;
      phone.socket.io.engine.close();
    }
    await wait(Math.max(0, start + (tick + 0.5) * period - performance.now()));
    bare.send(JSON.stringify(sampleEstimate(tick, performance.now())));
  }
  await outbox.emptied();
  await noteMemory();

  for (const { socket } of [phone, ...screens]) socket.disconnect();
  await bare.close();
  await relay.end();
  const inBook = repIdsInBook(dataFolder);
  await rm(dataFolder, { recursive: true, force: true });
  const distinct = new Set(inBook);
  return {
    relay: percentilesOf(relayLatencies),
    bare: percentilesOf(bare.latencies),
    estimatesSent: sent,
    deliveredShare: relayLatencies.length / (sent * screens.length),
    echoed,
    cuts,
    repsSent: outbox.sent.size,
    repsAcknowledged: outbox.acknowledged.size,
    repsMissing: [...outbox.sent].filter((id) => !distinct.has(id)).length,
    repsDoubled: inBook.length - distinct.size,
    residentMebibytes: memory,
  };

  async function noteMemory(): Promise<void> {
    const bytes = await relay.residentBytes();
    if (bytes !== null) memory.push(bytes / 1024 ** 2);
  }
}

interface Bare {
  readonly latencies: readonly number[];
  send(text: string): void;
  close(): Promise<void>;
}

async function openBare(receivers: number): Promise<Bare> {
  const program = runProgram(process.execPath, [join(import.meta.dirname, "bare-fan-out.run.ts")]);
  const [, port = ""] = await program.printed(/^port (\d+)\n/);
  const latencies: number[] = [];
  const open = async (path: string): Promise<WebSocket> => {
    const socket = new WebSocket(`wss://127.0.0.1:${port}${path}`, { rejectUnauthorized: false });
    await new Promise<void>((resolve, reject) => {
      socket.once("open", resolve);
      socket.once("error", reject);
    });
    return socket;
  };
  const sender = await open("/in");
  const outs = await Promise.all(Array.from({ length: receivers }, () => open("/out")));
  for (const out of outs) {
    out.on("message", (data) => {
      const text = data instanceof Uint8Array ? new TextDecoder().decode(data) : "{}";
      const message: unknown = JSON.parse(text);
      if (typeof message === "object" && message !== null && "capturedAt" in message) {
        latencies.push(performance.now() - Number(message.capturedAt));
      }
    });
  }
  return {
    latencies,
    send: (text) => {
      sender.send(text);
    },
    async close() {
      for (const socket of [sender, ...outs]) socket.terminate();
      program.child.kill("SIGTERM");
      await program.ended;
    },
  };
}
