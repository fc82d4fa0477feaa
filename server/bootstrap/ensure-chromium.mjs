import { existsSync } from "node:fs";
import { findChromium } from "../../client-capture/measure/chromium.ts";
import { run } from "./run.mjs";
import { ToldError } from "./told-error.mjs";

/**
 * Makes sure that there is a Chromium or Chrome for the browser tests, and certutil for the one that trusts a certificate.
 * Installs Debian's packages where that is possible without asking (root, apt-get).
 * @throws ToldError that says what to install.
 */
export async function ensureChromium() {
  const missing = [];
  if (!(await hasChromium())) missing.push("chromium");
  if (process.platform === "linux" && (await run("certutil", ["--version"])).code === 127)
    missing.push("libnss3-tools");
  if (missing.length === 0) return;

  const mayInstall = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (mayInstall) {
    console.log(`Installing Debian's ${missing.join(" and ")} for the browser tests ...`);
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    await run("apt-get", ["update", "-qq"], { env });
    const { code, output } = await run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...missing], {
      env,
    });
    if (code !== 0) console.error(output.trim().split("\n").slice(-5).join("\n"));
  }
  if (await hasChromium()) return;
  throw new ToldError(
    "The browser tests need Chromium or Chrome: install one (Debian and Ubuntu: sudo apt install chromium libnss3-tools), or name yours in OVERCUE_CHROMIUM.",
  );
}

async function hasChromium() {
  return findChromium().then(
    () => true,
    () => false,
  );
}
