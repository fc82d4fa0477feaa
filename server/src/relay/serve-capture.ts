import { estimateSchema } from "@overcue/shared-geometry/wire/estimate";
import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import { captureStateSchema } from "@overcue/shared-geometry/wire/hello";
import { liveCheckpointSchema, noRepSchema, repSchema, type Rep } from "@overcue/shared-geometry/wire/rep";
import type { z } from "zod";
import { answerWith } from "./answer-with.ts";
import { limits } from "./limits.ts";
import { readMessage } from "./read-message.ts";
import { screens, type RelayContext } from "./relay-context.ts";
import type { RelaySocket } from "./relay-socket.ts";
import { serveCommands } from "./serve-commands.ts";

/** Takes what a phone sends: live messages on to the screens, reps into the book first. */
export function serveCapture(socket: RelaySocket, context: RelayContext): void {
  const { io, drops, last } = context;

  /** Live messages count from the newest phone only: an older one is a ghost of a lost connection, or was replaced. */
  function live<T>(event: string, schema: z.ZodType<T>, take: (value: T) => void): (message: unknown) => void {
    return (message) => {
      const read = readMessage(schema, message);
      if (!read.ok) drops.drop("malformed", event, read.why);
      else if (last.capture !== socket) drops.drop("another-phone", event, "another phone was paired after this one.");
      else take(read.value);
    };
  }

  socket.on(
    "estimate",
    live("estimate", estimateSchema, (estimate) => {
      io.to(screens).volatile.emit("estimate", estimate);
    }),
  );
  socket.on(
    "checkpoint",
    live("checkpoint", liveCheckpointSchema, (checkpoint) => {
      last.checkpoint = checkpoint;
      io.to(screens).emit("checkpoint", checkpoint);
    }),
  );
  socket.on(
    "noRep",
    live("noRep", noRepSchema, (noRep) => {
      if (last.checkpoint?.repId === noRep.repId) last.checkpoint = null;
      io.to(screens).emit("noRep", noRep);
    }),
  );
  socket.on(
    "captureState",
    live("captureState", captureStateSchema, (state) => {
      if (last.captureState?.source !== state.source) showDemo(state.source === "demo", context);
      last.captureState = state;
      io.to(screens).emit("captureState", state);
    }),
  );
  // The sticks are set on the phone; everything else is decided in front of a screen.
  serveCommands(socket, context, ({ do: what }) =>
    what === "set-station"
      ? null
      : "A phone may set the station and nothing else: use the ground screen or a coach's handheld.",
  );
  // Reps are taken from any phone: one that was replaced may still hold some that are nowhere else.
  socket.on("rep", (...args) => {
    const answer = answerWith(args);
    const read = readMessage(repSchema, args[0]);
    if (read.ok) void keepRep(read.value, context).then(answer);
    else {
      drops.drop("malformed", "rep", read.why);
      answer({ ok: false, why: `The relay could not read this rep: ${read.why}` });
    }
  });
}

/** A book that cannot be written is told; the phone's state goes on to the screens all the same. */
function showDemo(shown: boolean, { book, drops }: RelayContext): void {
  try {
    book.showDemo(shown);
  } catch (error) {
    const why = error instanceof Error ? error.message : "for an unknown reason";
    drops.drop("failed", "captureState", `the demonstration's golfer could not be chosen: ${why}`);
  }
}

/** Never rejects: what went wrong is the answer, and the phone keeps the rep. */
async function keepRep(rep: Rep, { io, book, drops, last }: RelayContext): Promise<Acknowledgement> {
  try {
    await book.addRep(rep);
  } catch (error) {
    const why = error instanceof Error ? error.message : "for an unknown reason";
    drops.drop("failed", "rep", `it could not be written: ${why}`);
    return { ok: false, why: `The relay could not write this rep down: ${why}` };
  }
  if (!last.toldReps.has(rep.id)) {
    last.toldReps.add(rep.id);
    const [oldest] = last.toldReps;
    if (last.toldReps.size > limits.toldReps && oldest !== undefined) last.toldReps.delete(oldest);
    last.rep = rep;
    io.to(screens).emit("rep", rep);
  }
  return { ok: true };
}
