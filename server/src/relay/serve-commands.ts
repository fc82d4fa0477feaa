import type { Acknowledgement } from "@overcue/shared-geometry/wire/events";
import { practiceCommandSchema, type PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import { answerWith } from "./answer-with.ts";
import { readMessage } from "./read-message.ts";
import type { RelayContext } from "./relay-context.ts";
import type { RelaySocket } from "./relay-socket.ts";

const nameOf = { capture: "phone", display: "ground screen", coach: "coach" };

/** Takes the commands that a page may give; `refuses` says in one sentence why it may not give this one, or null. */
export function serveCommands(
  socket: RelaySocket,
  { book, drops }: Pick<RelayContext, "book" | "drops">,
  refuses: (command: PracticeCommand) => string | null,
): void {
  const { name, role } = socket.data.hello;
  const by = name.trim() === "" ? nameOf[role] : name.trim();

  socket.on("practice", (...args) => {
    const answer = answerWith(args);
    const read = readMessage(practiceCommandSchema, args[0]);
    if (read.ok) answer(obey(read.value));
    else {
      drops.drop("malformed", "practice", read.why);
      answer({ ok: false, why: `The relay could not read this request: ${read.why}` });
    }
  });

  function obey(command: PracticeCommand): Acknowledgement {
    const why = refuses(command);
    if (why !== null) {
      drops.drop("not-for-this-role", "practice", why);
      return { ok: false, why };
    }
    try {
      return book.command(command, by);
    } catch (error) {
      drops.drop("failed", "practice", sentenceOf(error));
      return { ok: false, why: sentenceOf(error) };
    }
  }
}

export function sentenceOf(error: unknown): string {
  return error instanceof Error ? error.message : "The practice book failed for an unknown reason.";
}
