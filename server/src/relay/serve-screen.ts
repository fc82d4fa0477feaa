import { answerWith } from "./answer-with.ts";
import type { RelayContext } from "./relay-context.ts";
import type { RelaySocket } from "./relay-socket.ts";
import { sentenceOf, serveCommands } from "./serve-commands.ts";

/** Takes what a ground screen or a coach's handheld asks. */
export function serveScreen(socket: RelaySocket, { book, drops }: RelayContext): void {
  serveCommands(socket, { book, drops }, () => null);

  socket.on("sessionView", (...args) => {
    try {
      answerWith(args)(book.sessionView());
    } catch (error) {
      drops.drop("failed", "sessionView", sentenceOf(error));
    }
  });
}
