import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { openPracticeBook } from "@overcue/server/book/open-practice-book";
import { openBookStore } from "@overcue/server/book/book-store";
import { runProgram } from "../relay/run-program.ts";

export interface RelayProcess {
  readonly origin: string;
  readonly secret: string;
  /** Memory that the process holds, bytes; null where the system does not say (only Linux does here). */
  residentBytes(): Promise<number | null>;
  /** Ends it as a loss of power would. */
  kill(): Promise<void>;
  /** Ends it as Ctrl-C does. @throws where that was not clean. */
  end(): Promise<void>;
}

/** The relay as people run it, a process of its own with a book on disk, on free loopback ports. */
export async function startRelayProcess(dataFolder: string): Promise<RelayProcess> {
  const main = join(import.meta.dirname, "../../server/src/main.ts");
  const free = ["--no-open", "--host", "127.0.0.1", "--port", "0", "--http-port", "0"];
  const program = runProgram(process.execPath, [main, ...free, "--data", dataFolder]);
  const [, port = "", secret = ""] = await program.printed(/https:\/\/localhost:(\d+)\/ground\/#pair=([\w-]{43})\n/);
  await program.printed(/Ctrl-C ends the relay/);
  return {
    origin: `https://127.0.0.1:${port}`,
    secret,
    async residentBytes() {
      const status = await readFile(`/proc/${String(program.child.pid)}/status`, "utf8").catch(() => "");
      const kilobytes = /^VmRSS:\s+(\d+) kB$/m.exec(status)?.[1];
      return kilobytes === undefined ? null : Number(kilobytes) * 1024;
    },
    async kill() {
      program.child.kill("SIGKILL");
      await program.ended;
    },
    async end() {
      program.child.kill("SIGINT");
      const code = await program.ended;
      if (code !== 0) throw new Error(`The relay ended with ${String(code)}:\n${program.output()}`);
    },
  };
}

/** Ids of the reps in a book that no relay holds open, each as often as it is in there. */
export function repIdsInBook(dataFolder: string): string[] {
  const file = join(dataFolder, "practice.book");
  // Opened as the relay does it first: a log left behind by a kill is played back then.
  openPracticeBook(file, { now: () => Date.now(), newId: () => crypto.randomUUID() }).close();
  const store = openBookStore(file);
  const ids = store.readJournal().flatMap(({ event }) => (event.type === "rep-recorded" ? [event.rep.id] : []));
  store.close();
  return ids;
}
