import type { Rep } from "@overcue/shared-geometry/wire/rep";
import type { Client } from "../relay/join-relay.ts";

/** A phone's reps: kept until acknowledged, all sent again at each connection. */
export interface Outbox {
  readonly sent: ReadonlySet<string>;
  readonly acknowledged: ReadonlySet<string>;
  add(rep: Rep): void;
  /** Resolves when nothing waits any more. */
  emptied(): Promise<void>;
  /** Goes on over another socket (the relay's next run). */
  useSocket(socket: Client): void;
}

export function openOutbox(first: Client): Outbox {
  let socket = first;
  const waiting = new Map<string, Rep>();
  const sent = new Set<string>();
  const acknowledged = new Set<string>();
  let whenEmpty: (() => void)[] = [];

  function send(rep: Rep): void {
    socket.emit("rep", rep, (answer) => {
      if (!answer.ok || !waiting.delete(rep.id)) return;
      acknowledged.add(rep.id);
      if (waiting.size > 0) return;
      for (const done of whenEmpty) done();
      whenEmpty = [];
    });
  }
  function sendAll(): void {
    for (const rep of waiting.values()) send(rep);
  }
  socket.on("connect", sendAll);

  return {
    sent,
    acknowledged,
    add(rep) {
      waiting.set(rep.id, rep);
      sent.add(rep.id);
      // Not while away: the socket library would send its own copy of the message as well as ours.
      if (socket.connected) send(rep);
    },
    async emptied() {
      if (waiting.size === 0) return;
      await new Promise<void>((resolve) => whenEmpty.push(resolve));
    },
    useSocket(next) {
      socket = next;
      socket.on("connect", sendAll);
      if (socket.connected) sendAll();
    },
  };
}
