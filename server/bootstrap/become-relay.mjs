import { spawn } from "node:child_process";
import { join } from "node:path";
import { checkout, projectNode } from "./checkout.mjs";
import { projectEnvironment } from "./run.mjs";

/** Runs the relay on the project's Node until it ends, hands it every signal, and ends with its exit code. */
export async function becomeRelay(args) {
  const relay = spawn(projectNode, [join(checkout, "server/src/main.ts"), ...args], {
    stdio: "inherit",
    env: projectEnvironment(),
  });
  // A Ctrl-C reaches the relay by itself as well, since it shares the terminal; a second signal does it no harm.
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => relay.kill(signal));
  process.exitCode = await new Promise((resolve, reject) => {
    relay.on("error", reject);
    relay.on("close", (code) => resolve(code ?? 1));
  });
}
