import { existsSync } from "node:fs";
import { join } from "node:path";
import { checkout, projectNode } from "./checkout.mjs";
import { isInstalled } from "./is-installed.mjs";
import { run, runNpm } from "./run.mjs";
import { ToldError } from "./told-error.mjs";

const quiet = ["--no-audit", "--no-fund", "--loglevel=error"];

/**
 * Brings node_modules to what the lock file says, the project's own Node included. Does nothing where it is so already.
 * @throws ToldError with a sentence: no network, no npm, or what npm said.
 */
export async function ensureInstalled() {
  if (await isInstalled()) return;
  console.log("Installing what is missing (once; a minute or two) ...");
  const fresh = !existsSync(join(checkout, "node_modules"));
  // A clean install takes exactly the lock file; over an existing folder only the differences are fetched.
  let result = await runNpm([fresh ? "ci" : "install", ...quiet]);
  if (result.code !== 0 && fresh && /EUSAGE|in sync/.test(result.output)) {
    console.log("The lock file does not match package.json, so npm works the versions out anew.");
    result = await runNpm(["install", ...quiet]);
  }
  if (result.code !== 0) throw new ToldError(sentenceFor(result));
  if (!(await nodeRuns())) {
    throw new ToldError(
      'The project\'s own Node was not installed: npm must be allowed to run the install script of the package "node" (npm approve-scripts node, or npm rebuild node), then start again.',
    );
  }
}

async function nodeRuns() {
  if (!existsSync(projectNode)) await runNpm(["rebuild", "node", ...quiet]);
  return existsSync(projectNode) && (await run(projectNode, ["--version"])).code === 0;
}

function sentenceFor({ code, output }) {
  if (code === 127) return "npm was not found: install Node together with npm from nodejs.org, then start again.";
  if (/ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ENETUNREACH|EHOSTUNREACH/.test(output)) {
    return "The first start needs the network to install packages, and npm could not reach its registry: connect, then start again.";
  }
  if (/EACCES|EPERM|EROFS/.test(output)) {
    return `npm may not write to ${join(checkout, "node_modules")}: make the project's folder writable, then start again.`;
  }
  if (/ENOSPC/.test(output)) return "The disk is full: free about 1 GB, then start again.";
  return `Installing failed (npm ended with ${code}). What npm said:\n${output.trim().split("\n").slice(-15).join("\n")}`;
}
