import type { ToRelay } from "@overcue/shared-geometry/wire/events";
import { estimateSchema } from "@overcue/shared-geometry/wire/estimate";
import { captureStateSchema, peersSchema, type Role } from "@overcue/shared-geometry/wire/hello";
import { pairingSchema } from "@overcue/shared-geometry/wire/pairing";
import {
  practiceStateSchema,
  sessionViewSchema,
  type PracticeCommand,
  type SessionView,
} from "@overcue/shared-geometry/wire/practice";
import { liveCheckpointSchema, noRepSchema, repSchema } from "@overcue/shared-geometry/wire/rep";
import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { io, type Socket } from "socket.io-client";
import { z } from "zod";
import { addCheckpoint, addRep, dropRep, type ScreenStore } from "../store/screen-store.ts";
import type { LiveFeed } from "./live-feed.ts";
import { keepClock, type RelayClock } from "./keep-clock.ts";

/** Nothing the relay says is believed before it is parsed. */
type Untrusted = Record<string, (message: unknown) => void>;

export interface RelayLink {
  /** Resolves with null, or with the sentence that says why it was not done. */
  readonly ask: (command: PracticeCommand) => Promise<string | null>;
  readonly sessionView: () => Promise<SessionView | null>;
  readonly clock: RelayClock;
  readonly close: () => void;
}

export interface LinkParts {
  /** The relay's origin; the page's own where it is left out. */
  readonly origin: string;
  readonly role: Role;
  readonly secret: string;
  readonly name: string;
  readonly store: ScreenStore;
  readonly feed: LiveFeed;
  /** Local time in milliseconds that never jumps. */
  readonly now: () => number;
}

const answerPatience = 5_000;
const answerSchema = z.discriminatedUnion("ok", [
  z.object({ ok: z.literal(true) }),
  z.object({ ok: z.literal(false), why: z.string() }),
]);

/** Opens the socket, keeps the store and the feed up to date, and offers what a screen may ask for. */
export function connectRelay({ origin, role, secret, name, store, feed, now }: LinkParts): RelayLink {
  const socket: Socket<Untrusted, ToRelay> = io(origin, {
    auth: { role, secret, protocol: protocolVersion, name },
    reconnectionDelay: 300,
    reconnectionDelayMax: 3_000,
  });
  const clock = keepClock(socket, now);

  const hear = <T>(event: string, schema: z.ZodType<T>, take: (message: T) => void): void => {
    socket.on(event, (message: unknown) => {
      const parsed = schema.safeParse(message);
      if (parsed.success) take(parsed.data);
      else store.setState(({ badMessages }) => ({ badMessages: badMessages + 1 }));
    });
  };
  hear("estimate", estimateSchema, feed.push);
  hear("checkpoint", liveCheckpointSchema, (told) => {
    store.setState((state) => addCheckpoint(state, told));
  });
  hear("noRep", noRepSchema, (told) => {
    store.setState((state) => dropRep(state, told));
  });
  hear("rep", repSchema, (rep) => {
    store.setState((state) => addRep(state, rep));
  });
  hear("captureState", captureStateSchema, (capture) => {
    store.setState({ capture });
  });
  hear("practice", practiceStateSchema, (practice) => {
    store.setState({ practice });
  });
  hear("peers", peersSchema, (peers) => {
    store.setState(peers.capture === 0 ? { peers, capture: null, checkpoints: [] } : { peers });
    if (peers.capture === 0) feed.clear();
  });
  hear("pairing", pairingSchema, (pairing) => {
    store.setState({ pairing });
  });
  hear("trouble", z.string().max(500), (trouble) => {
    store.setState({ trouble });
  });

  socket.on("connect", () => {
    store.setState({ link: { kind: "connected" }, trouble: null });
  });
  socket.on("disconnect", (reason) => {
    feed.clear();
    store.setState({ link: { kind: "lost" }, peers: null, checkpoints: [] });
    // A relay that ends on purpose says goodbye, after which the library would wait for ever.
    if (reason === "io server disconnect") socket.connect();
  });
  socket.on("connect_error", (error) => {
    // An inactive socket was refused by the relay itself and does not try again on its own.
    store.setState({ link: socket.active ? { kind: "lost" } : { kind: "refused", why: error.message } });
  });

  return {
    clock,
    ask: async (command) => {
      try {
        const answer = answerSchema.safeParse(await socket.timeout(answerPatience).emitWithAck("practice", command));
        if (!answer.success) return "The relay answered something this page does not understand: reload the page.";
        return answer.data.ok ? null : answer.data.why;
      } catch {
        return "The relay did not answer: nothing was changed. Try again when the connection is back.";
      }
    },
    sessionView: async () => {
      try {
        const answer = sessionViewSchema.safeParse(await socket.timeout(answerPatience).emitWithAck("sessionView"));
        return answer.success ? answer.data : null;
      } catch {
        return null;
      }
    },
    close: () => {
      clock.stop();
      socket.close();
    },
  };
}
