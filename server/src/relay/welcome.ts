import type { Pairing } from "@overcue/shared-geometry/wire/pairing";
import type { RelayContext } from "./relay-context.ts";
import type { RelaySocket } from "./relay-socket.ts";

/** Tells a page that has just joined how things stand, so that it never waits for the next change to draw. */
export function welcome(socket: RelaySocket, { book, last }: RelayContext, pairing: Pairing): void {
  socket.emit("practice", book.state());
  if (socket.data.hello.role === "capture") return;
  if (socket.data.hello.role === "display") socket.emit("pairing", pairing);
  if (last.captureState !== null) socket.emit("captureState", last.captureState);
  if (last.checkpoint !== null) socket.emit("checkpoint", last.checkpoint);
  if (last.rep !== null) socket.emit("rep", last.rep);
}
