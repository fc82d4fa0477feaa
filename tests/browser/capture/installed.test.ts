import { cp, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { createApplication, type Application } from "@overcue/server/app";
import { machineEffects } from "@overcue/server/machine-effects";
import { pairingAddress } from "@overcue/shared-geometry/wire/pairing";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { fakeBook } from "../../relay/fakes.ts";
import { heardOf, joinRelay } from "../../relay/join-relay.ts";
import { launchChromium } from "../chromium.ts";
import { hasCertutil, moveToTrustingHome } from "../trusting-home.ts";
import { press, screen } from "./phone-views.ts";

if (!hasCertutil) console.log("S10 is skipped in part: this machine has no certutil (Debian: libnss3-tools).");

const built = join(import.meta.dirname, "../../../build");
let folder: string;
let application: Application | null = null;
let browser: Browser;
let leaveHome: () => Promise<void> = () => Promise.resolve();

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "overcue-installed-"));
});
afterEach(async () => {
  await browser.close();
  await application?.close();
  await leaveHome();
  await rm(folder, { recursive: true, force: true });
});

/** The relay of one laptop: started again it has the same authority, and another secret. `port` 0: any. */
async function startRelay(port: number, buildFolder = built): Promise<Application> {
  const config = {
    port,
    httpPort: 0,
    host: "127.0.0.1",
    dataFolder: join(folder, "data"),
    buildFolder,
    name: "test",
    openBrowser: false,
  };
  application = await createApplication(config, machineEffects, fakeBook());
  return application;
}

const address = ({ port, secret }: Application): string =>
  pairingAddress(`https://127.0.0.1:${String(port)}`, "capture", secret);

async function openTrustingPhone(relay: Application): Promise<Page> {
  const { leave } = await moveToTrustingHome(relay.certificates().authority.pem);
  leaveHome = leave;
  browser = await launchChromium();
  const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
  await page.goto(address(relay));
  return page;
}

/** Waits until the browser has the whole page, and says so. */
async function kept(page: Page): Promise<void> {
  await press(page, "Help, place and cautions");
  await page.getByText("Kept: opens without the relay").waitFor({ timeout: 60_000 });
  await press(page, "Back");
}

const buildOf = async (page: Page): Promise<string | null> =>
  await page.locator('meta[name="overcue-build"]').getAttribute("content");

/** The built pages with another build's name in them, as the next version would have. */
async function nextBuild(): Promise<string> {
  const next = join(folder, "build");
  await cp(join(built, "client-capture"), join(next, "client-capture"), { recursive: true });
  const { build } = JSON.parse(await readFile(join(next, "client-capture/build.json"), "utf8")) as { build: string };
  for (const file of ["index.html", "build.json", "service-worker.js"]) {
    const text = await readFile(join(next, "client-capture", file), "utf8");
    await writeFile(join(next, "client-capture", file), text.replaceAll(build, "the-next-build"));
  }
  return next;
}

describe("S10 the phone's page as an app", () => {
  it.skipIf(!hasCertutil)("S10 has a manifest without a fault, and every icon that it names is there", async () => {
    const page = await openTrustingPhone(await startRelay(0));
    await screen(page, "choose");
    const devtools = await page.context().newCDPSession(page);
    const { errors, data } = (await devtools.send("Page.getAppManifest")) as { errors: unknown[]; data?: string };
    expect(errors).toEqual([]);
    const { icons, start_url, scope, display } = JSON.parse(data ?? "{}") as {
      icons: { src: string; sizes: string }[];
      start_url: string;
      scope: string;
      display: string;
    };
    expect([start_url, scope, display]).toEqual(["/phone/", "/phone/", "standalone"]);
    for (const { src, sizes } of icons) {
      const size = await page.evaluate(async (at) => {
        const image = new Image();
        image.src = at;
        await image.decode();
        return `${String(image.naturalWidth)}x${String(image.naturalHeight)}`;
      }, src);
      expect(sizes === "any" || sizes === size).toBe(true);
    }
    // The one thing that Chromium may have against it here is the test's window without a profile.
    await kept(page);
    const faults = await devtools.send("Page.getInstallabilityErrors");
    expect(faults.installabilityErrors.map(({ errorId }) => errorId).filter((id) => id !== "in-incognito")).toEqual([]);
  });

  it.skipIf(!hasCertutil)(
    "S10 opens with its pose model while the relay is away, and says that it is away",
    async () => {
      const relay = await startRelay(0);
      const page = await openTrustingPhone(relay);
      await screen(page, "choose");
      await kept(page);
      await relay.close();
      application = null;
      await page.reload();
      await screen(page, "choose");
      await page.getByText("Relay out of reach").waitFor();
      const sizes = await page.evaluate(async () => {
        const files = ["/phone/pose/pose-landmarker-full.task", "/phone/pose/vision_wasm_module_internal.wasm"];
        return await Promise.all(files.map(async (file) => (await (await fetch(file)).arrayBuffer()).byteLength));
      });
      for (const size of sizes) expect(size).toBeGreaterThan(1_000_000);
      // The model that is kept runs: nothing says that it does not.
      await press(page, "Help, place and cautions");
      await page.getByText("Kept: opens without the relay").waitFor({ timeout: 60_000 });
      expect(await page.getByText("The pose model does not run").count()).toBe(0);
    },
  );

  it.skipIf(!hasCertutil)(
    "S10 never shows a kept page where the relay has a newer one, and an open page gives way to it",
    async () => {
      const first = await startRelay(0);
      const page = await openTrustingPhone(first);
      await screen(page, "choose");
      await kept(page);
      const before = await buildOf(page);
      await first.close();
      await startRelay(first.port, await nextBuild());
      // The page that stayed open has the old secret; a page that is loaded anew comes from the relay.
      await page.reload();
      await screen(page, "choose");
      expect(await buildOf(page)).toBe("the-next-build");
      expect(before).not.toBe("the-next-build");
    },
  );

  it.skipIf(!hasCertutil)(
    "S10 a page that stayed open while the relay got a newer one loads it as soon as it is connected and idle",
    async () => {
      const next = await nextBuild();
      const relay = await startRelay(0, next);
      const { leave } = await moveToTrustingHome(relay.certificates().authority.pem);
      leaveHome = leave;
      browser = await launchChromium();
      const page = await browser.newPage();
      // The relay's page is the older one for this first visit only.
      const older = await readFile(join(built, "client-capture/index.html"), "utf8");
      let visits = 0;
      await page.route("**/phone/", async (route) => {
        visits++;
        if (visits === 1) await route.fulfill({ body: older, contentType: "text/html", headers: isolated });
        else await route.continue();
      });
      await page.goto(address(relay));
      await expect.poll(() => buildOf(page), { timeout: 30_000 }).toBe("the-next-build");
      expect(visits).toBe(2);
    },
  );

  it("S7 S10 with a certificate accepted by hand it works, says that it is not kept and why, and the screens are told", async () => {
    const relay = await startRelay(0);
    browser = await launchChromium();
    const page = await (await browser.newContext({ ignoreHTTPSErrors: false })).newPage();
    await page.goto(address(relay)).catch(() => undefined);
    await page.locator("#details-button").click();
    await page.locator("#proceed-link").click();
    await screen(page, "choose");
    await press(page, "Help, place and cautions");
    await page.getByText("Works, but is not kept on this phone").waitFor({ timeout: 60_000 });
    expect(await page.getByText("The certificate was accepted by hand").count()).toBe(1);
    const coach = await joinRelay(`https://127.0.0.1:${String(relay.port)}`, "coach", { secret: relay.secret });
    await expect
      .poll(() => (heardOf(coach, "captureState").at(-1) as CaptureState | undefined)?.said?.["certificate"]?.words)
      .toContain("accepted by hand");
    coach.socket.close();
  });

  it("S10 opened from the home screen, without a code, it still knows the relay's run that it was paired with", async () => {
    const relay = await startRelay(0);
    browser = await launchChromium();
    const page = await (await browser.newContext({ ignoreHTTPSErrors: true })).newPage();
    await page.goto(address(relay));
    await page.getByText("Paired, no ground screen open").waitFor();
    await page.goto(`https://127.0.0.1:${String(relay.port)}/phone/`);
    await page.getByText("Paired, no ground screen open").waitFor();
    expect(new URL(page.url()).hash).toBe("");
  });
});

/** What the relay says with its pages, as far as these pages need it to run. */
const isolated = { "Cross-Origin-Opener-Policy": "same-origin", "Cross-Origin-Embedder-Policy": "require-corp" };
