import { existsSync } from "node:fs";
import { run } from "./run.mjs";

/**
 * Installs Debian's Firefox for the browser tests' second engine, where that is possible without asking (root, apt-get).
 * Never fails: without it those tests say that they were skipped.
 */
export async function ensureSecondEngine() {
  const named = (process.env.OVERCUE_FIREFOX ?? "") !== "";
  const mayInstall = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (named || !mayInstall || (await hasFirefox())) return;
  console.log("Installing Debian's firefox-esr, the second engine of the browser tests ...");
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  await run("apt-get", ["update", "-qq"], { env });
  const { code, output } = await run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "firefox-esr"], {
    env,
  });
  if (code !== 0) console.error(output.trim().split("\n").slice(-5).join("\n"));
}

async function hasFirefox() {
  for (const name of ["firefox-esr", "firefox"]) if ((await run(name, ["--version"])).code === 0) return true;
  return false;
}
