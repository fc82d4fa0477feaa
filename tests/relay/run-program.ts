import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";

export interface RunningProgram {
  readonly child: ChildProcess;
  /** All that it printed so far, both streams. */
  output(): string;
  /** Resolves when it has printed a match. @throws where it ends without. */
  printed(pattern: RegExp): Promise<RegExpExecArray>;
  /** Its exit code; null where a signal ended it. */
  readonly ended: Promise<number | null>;
}

/** Starts a program of its own; whoever starts it sees to its end. */
export function runProgram(
  command: string,
  args: readonly string[],
  options: { readonly cwd?: string; readonly env?: Readonly<Record<string, string>> } = {},
): RunningProgram {
  const child = spawn(command, [...args], {
    ...(options.cwd === undefined ? {} : { cwd: options.cwd }),
    env: { ...process.env, ...options.env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let text = "";
  const listeners = new Set<() => void>();
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding("utf8");
    stream.on("data", (part: string) => {
      text += part;
      for (const listener of listeners) listener();
    });
  }
  const ended = once(child, "close").then(() => child.exitCode);
  return {
    child,
    ended,
    output: () => text,
    async printed(pattern) {
      return new Promise((resolve, reject) => {
        const look = (): void => {
          const match = pattern.exec(text);
          if (match === null) return;
          listeners.delete(look);
          resolve(match);
        };
        listeners.add(look);
        void ended.then(() => {
          reject(new Error(`The program ended without printing ${String(pattern)}. It printed:\n${text}`));
        });
        look();
      });
    },
  };
}
