import { spawn } from "node:child_process";
import { delimiter, join } from "node:path";
import { checkout, projectNode } from "./checkout.mjs";

/**
 * Runs a program to its end.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {{ cwd?: string, show?: boolean, env?: NodeJS.ProcessEnv, shell?: boolean }} [options] `show`: its output goes to the terminal; else it is answered.
 * @returns {Promise<{ code: number, output: string }>} code 127 where the program could not be started.
 */
export function run(command, args, options = {}) {
  const { cwd = checkout, show = false, env = process.env, shell = false } = options;
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd, env, shell, stdio: show ? "inherit" : ["ignore", "pipe", "pipe"] });
    let output = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream?.on("data", (chunk) => {
        output += chunk;
      });
    }
    child.on("error", (error) => resolve({ code: 127, output: String(error) }));
    child.on("close", (code) => resolve({ code: code ?? 1, output }));
  });
}

/** Runs a file on the project's own Node, with the project's tools first on the PATH. */
export function runOnProjectNode(args, options = {}) {
  return run(projectNode, args, { env: projectEnvironment(), ...options });
}

export function runNpm(args, options = {}) {
  // Under `npm start` npm says where it is; without it Windows needs a shell to find npm.cmd.
  const npm = process.env.npm_execpath;
  if (npm !== undefined && /\.[cm]?js$/.test(npm)) return run(process.execPath, [npm, ...args], options);
  return run("npm", args, { shell: process.platform === "win32", ...options });
}

export function projectEnvironment() {
  const path = [join(checkout, "node_modules/.bin"), process.env.PATH ?? process.env.Path ?? ""].join(delimiter);
  return { ...process.env, PATH: path };
}
