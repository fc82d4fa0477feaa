import { execFile } from "node:child_process";
import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { startRelay, type RunningRelay } from "../../relay/start-relay.ts";
import { launchChromium } from "../chromium.ts";

const run = promisify(execFile);
const homeBefore = process.env["HOME"];
const hasCertutil = await run("certutil", ["-L", "-d", "sql:/nowhere"]).then(
  () => true,
  (error: unknown) => !(error instanceof Error && "code" in error && error.code === "ENOENT"),
);

let relay: RunningRelay;
let home: string;
let browser: Browser;

beforeAll(async () => {
  relay = await startRelay();
});
afterAll(async () => {
  await relay.close();
});
beforeEach(async () => {
  // Chromium on Linux keeps the authorities that a person added in a database under the home folder.
  home = await mkdtemp(join(tmpdir(), "overcue-home-"));
  process.env["HOME"] = home;
});
afterEach(async () => {
  await browser.close();
  if (homeBefore === undefined) delete process.env["HOME"];
  else process.env["HOME"] = homeBefore;
  await rm(home, { recursive: true, force: true });
});

async function openPage(): Promise<Page> {
  browser = await launchChromium();
  const context = await browser.newContext({ ignoreHTTPSErrors: false });
  return context.newPage();
}

/** What a page may do that only a secure place may. */
async function powersOf(page: Page): Promise<{ secure: boolean; camera: boolean; isolated: boolean }> {
  return page.evaluate(() => ({
    secure: isSecureContext,
    camera: "mediaDevices" in navigator && typeof navigator.mediaDevices.getUserMedia === "function",
    isolated: crossOriginIsolated,
  }));
}

describe("trust in a real browser", () => {
  it.skipIf(!hasCertutil)(
    "T1 with the authority from the trust page installed, the page opens without a warning and may use the camera",
    async () => {
      const pem = await (await fetch(`http://127.0.0.1:${relay.application.httpPort}/overcue-authority.pem`)).text();
      const database = join(home, ".pki/nssdb");
      await mkdir(database, { recursive: true });
      await writeFile(join(home, "authority.pem"), pem);
      await run("certutil", ["-N", "--empty-password", "-d", `sql:${database}`]);
      const trusted = ["-A", "-n", "overcue", "-t", "C,,", "-i", join(home, "authority.pem"), "-d", `sql:${database}`];
      await run("certutil", trusted);

      const page = await openPage();
      const answer = await page.goto(`${relay.origin}/phone/`);
      expect(answer?.url()).toBe(`${relay.origin}/phone/`);
      expect(await answer?.securityDetails()).toMatchObject({
        subjectName: "Overcue relay",
        issuer: "Overcue on test",
      });
      expect(await powersOf(page)).toEqual({ secure: true, camera: true, isolated: true });
    },
  );

  it("T1 without it the browser warns, and going on past the warning still gives the camera", async () => {
    const page = await openPage();
    await expect(page.goto(`${relay.origin}/phone/`)).rejects.toThrow("ERR_CERT_AUTHORITY_INVALID");
    await page.locator("#details-button").click();
    await page.locator("#proceed-link").click();
    await page.waitForURL(`${relay.origin}/phone/`);
    expect(await powersOf(page)).toEqual({ secure: true, camera: true, isolated: true });
  });

  it("W1 the trust page opens without a warning and its steps unfold", async () => {
    const page = await openPage();
    await page.goto(`http://127.0.0.1:${relay.application.httpPort}/`);
    for (const device of await page.locator("details").all()) {
      await device.locator("summary").click();
      expect(await device.locator("li").count()).toBeGreaterThan(1);
      expect(await device.locator("li").first().isVisible()).toBe(true);
    }
    expect(await page.locator(".number").innerText()).toBe(relay.application.certificates().authority.fingerprint);
  });
});
