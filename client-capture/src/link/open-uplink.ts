import { io, type Socket } from "socket.io-client";
import { z } from "zod";
import type { Acknowledgement, FromRelay, ToRelay } from "@overcue/shared-geometry/wire/events";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { CaptureState, Hello, Peers } from "@overcue/shared-geometry/wire/hello";
import { peersSchema } from "@overcue/shared-geometry/wire/hello";
import { practiceStateSchema, type PracticeCommand, type PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { StationSettings } from "@overcue/shared-geometry/station";
import type { LiveCheckpoint, NoRep, Rep } from "@overcue/shared-geometry/wire/rep";
import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { clockOffset, type RoundTrip } from "./clock-offset.ts";

export type LinkState =
  | { readonly is: "connecting" }
  | { readonly is: "connected" }
  /** The relay said no: trying again by itself would not help. */
  | { readonly is: "refused"; readonly why: string }
  | { readonly is: "unreachable" };

export interface Uplink {
  /** The relay's clock at a time of the page's clock, milliseconds; null before the first answer. */
  relayTime(pageTime: number): number | null;
  sendEstimate(estimate: Estimate): void;
  sendCheckpoint(checkpoint: LiveCheckpoint): void;
  sendNoRep(noRep: NoRep): void;
  sendState(state: CaptureState): void;
  /** Rejects where the relay does not answer in time. */
  sendRep(rep: Rep): Promise<Acknowledgement>;
  /** Tells the relay of the station that was set. Rejects where it does not answer in time. */
  sendStation(settings: StationSettings): Promise<Acknowledgement>;
  /** Messages from the relay that could not be read. */
  dropped(): number;
  close(): void;
}

export interface UplinkParts {
  readonly origin: string;
  readonly secret: string;
  readonly name: string;
  readonly onState: (state: LinkState) => void;
  readonly onPeers: (peers: Peers) => void;
  readonly onPractice: (practice: PracticeState) => void;
}

const acknowledgementSchema = z.discriminatedUnion("ok", [
  z.object({ ok: z.literal(true) }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);

const answerWithin = 8000;
const clockEvery = 5000;
const clockAtFirst = 6;

/** The phone's end of the socket. It connects anew by itself until it is closed or refused. */
export function openUplink(parts: UplinkParts): Uplink {
  const hello: Hello = { role: "capture", secret: parts.secret, protocol: protocolVersion, name: parts.name };
  // Polling first, then wss where the browser allows it: one that distrusts the certificate may refuse wss.
  const socket: Socket<FromRelay, ToRelay> = io(parts.origin, { auth: hello, reconnectionDelayMax: 3000 });
  const trips: RoundTrip[] = [];
  let dropped = 0;
  let timer: ReturnType<typeof setInterval> | undefined;

  const askClock = async (): Promise<void> => {
    const sent = performance.now();
    try {
      const relayTime: unknown = await socket.timeout(answerWithin).emitWithAck("clock");
      if (typeof relayTime !== "number" || !Number.isFinite(relayTime)) dropped++;
      else trips.push({ sent, received: performance.now(), relayTime });
      if (trips.length > 50) trips.splice(0, 25);
    } catch {
      // The next one is asked soon.
    }
  };
  const askOften = async (): Promise<void> => {
    for (let i = 0; i < clockAtFirst && socket.connected; i++) await askClock();
  };

  socket.on("connect", () => {
    // Another relay may answer now, with another clock.
    trips.length = 0;
    parts.onState({ is: "connected" });
    void askOften();
    clearInterval(timer);
    timer = setInterval(() => void askClock(), clockEvery);
  });
  socket.on("disconnect", (reason) => {
    clearInterval(timer);
    parts.onState({ is: "unreachable" });
    // A relay that closes by itself wants no automatic return by default; this one comes back after a restart.
    if (reason === "io server disconnect") socket.connect();
  });
  socket.on("connect_error", (error) => {
    if (socket.active) parts.onState({ is: "unreachable" });
    else parts.onState({ is: "refused", why: error.message });
  });
  socket.on("peers", (message: unknown) => {
    const peers = peersSchema.safeParse(message);
    if (peers.success) parts.onPeers(peers.data);
    else dropped++;
  });
  socket.on("practice", (message: unknown) => {
    const practice = practiceStateSchema.safeParse(message);
    if (practice.success) parts.onPractice(practice.data);
    else dropped++;
  });

  return {
    relayTime(pageTime) {
      const known = clockOffset(trips);
      return known === null ? null : pageTime + known.offset;
    },
    sendEstimate(estimate) {
      socket.volatile.emit("estimate", estimate);
    },
    sendCheckpoint(checkpoint) {
      if (socket.connected) socket.emit("checkpoint", checkpoint);
    },
    sendNoRep(noRep) {
      if (socket.connected) socket.emit("noRep", noRep);
    },
    sendState(state) {
      socket.volatile.emit("captureState", state);
    },
    async sendRep(rep) {
      if (!socket.connected) throw new Error("Not connected.");
      const answer: unknown = await socket.timeout(answerWithin).emitWithAck("rep", rep);
      return acknowledgementSchema.parse(answer);
    },
    async sendStation({ club, toeLine, heelLine, tolerance }) {
      if (!socket.connected) throw new Error("Not connected.");
      const command: PracticeCommand = { do: "set-station", club, toeLine, heelLine, tolerance };
      const answer: unknown = await socket.timeout(answerWithin).emitWithAck("practice", command);
      return acknowledgementSchema.parse(answer);
    },
    dropped: () => dropped,
    close() {
      clearInterval(timer);
      socket.close();
    },
  };
}
