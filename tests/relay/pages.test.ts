import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import http from "node:http";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { X509Certificate } from "node:crypto";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { servePages } from "@overcue/server/web/serve-pages";
import { fakeEffects } from "./fakes.ts";
import { startRelay, type RunningRelay } from "./start-relay.ts";

let relay: RunningRelay;
let trust: string;
let buildFolder: string;
let pages: http.Server;
let origin: string;

beforeAll(async () => {
  relay = await startRelay(fakeEffects());
  trust = `http://127.0.0.1:${relay.application.httpPort}`;
  buildFolder = await mkdtemp(join(tmpdir(), "overcue-build-"));
  for (const file of [
    "client-capture/index.html",
    "client-capture/manifest.webmanifest",
    "client-capture/assets/main-B4d5.js",
    "client-capture/pose/pose-landmarker-lite.task",
    "client-capture/pose/vision.wasm",
    "client-display/ground/index.html",
    "client-display/display-assets/ground-X1y2.css",
  ]) {
    await mkdir(dirname(join(buildFolder, file)), { recursive: true });
    await writeFile(join(buildFolder, file), `content of ${file}`);
  }
  // The same pages without their certificate: what is looked at here is what they say.
  pages = http.createServer(servePages(buildFolder));
  await new Promise<void>((resolve) => pages.listen(0, "127.0.0.1", resolve));
  const address = pages.address();
  origin = `http://127.0.0.1:${typeof address === "object" && address !== null ? address.port : 0}`;
});
afterAll(async () => {
  await relay.close();
  pages.closeAllConnections();
  pages.close();
  await rm(buildFolder, { recursive: true, force: true });
});

async function get(address: string): Promise<Response> {
  return fetch(address, { redirect: "manual" });
}

describe("the trust page", () => {
  it("W1 has steps for each kind of device, the number to compare and the way without", async () => {
    const page = await (await get(`${trust}/`)).text();
    for (const device of ["iPhone, iPad", "Android", "Mac", "Windows", "Linux"]) {
      expect(page).toContain(`<summary>${device}</summary>`);
    }
    expect(page).toContain(relay.application.certificates().authority.fingerprint);
    expect(page).toContain("Go on without it");
    expect(page).toContain(`https://127.0.0.1:${relay.application.port}/phone/`);
    expect(page).not.toMatch(/<script|http-equiv/);
  });

  it("W1 every file that it offers is the authority, in a type that the device opens", async () => {
    const { authority } = relay.application.certificates();
    const der = await get(`${trust}/overcue-authority.crt`);
    expect(der.headers.get("content-type")).toBe("application/x-x509-ca-cert");
    expect(new X509Certificate(new Uint8Array(await der.arrayBuffer())).fingerprint256).toBe(authority.fingerprint);

    const pem = await get(`${trust}/overcue-authority.pem`);
    expect(new X509Certificate(await pem.text()).fingerprint256).toBe(authority.fingerprint);

    const profile = await get(`${trust}/overcue.mobileconfig`);
    expect(profile.headers.get("content-type")).toBe("application/x-apple-aspen-config");
    const data = /<data>([^<]*)<\/data>/.exec(await profile.text())?.[1] ?? "";
    expect(new X509Certificate(Buffer.from(data, "base64")).fingerprint256).toBe(authority.fingerprint);
  });

  it("W1 a profile fetched twice is the same profile, so that it replaces itself", async () => {
    const first = await (await get(`${trust}/overcue.mobileconfig`)).text();
    const second = await (await get(`${trust}/overcue.mobileconfig`)).text();
    expect(second).toBe(first);
    expect(first).toMatch(/<string>[0-9A-F]{8}-[0-9A-F]{4}-8[0-9A-F]{3}-[89AB][0-9A-F]{3}-[0-9A-F]{12}<\/string>/);
  });

  it.each(["/ground/", "/phone/", "/socket.io/?EIO=4&transport=polling", "/authority.key.pem"])(
    "W1 nothing else is there: %s",
    async (path) => {
      const answer = await get(`${trust}${path}`);
      expect(answer.status).toBe(404);
      expect(await answer.text()).toBe("Only the page about the certificate is served here: open / instead.");
    },
  );

  it("W1 writes no part of a strange Host header into the page", async () => {
    const page = await new Promise<string>((resolve, reject) => {
      http
        .get(`${trust}/`, { headers: { host: '"><img src=x>' } }, (answer) => {
          answer.setEncoding("utf8");
          let text = "";
          answer.on("data", (part: string) => (text += part));
          answer.on("end", () => {
            resolve(text);
          });
        })
        .on("error", reject);
    });
    expect(page).not.toContain("<img");
    expect(page).toContain(`https://localhost:${relay.application.port}/phone/`);
  });
});

describe("the pages", () => {
  it("W2 have an icon for browsers that ask for none that a page names", async () => {
    const answer = await get(`${origin}/favicon.ico`);
    expect([answer.status, answer.headers.get("location")]).toEqual([302, "/phone/icon.svg"]);
  });

  it("W2 may load and connect to their own origin only", async () => {
    const { headers } = await get(`${origin}/phone/`);
    const policy = headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("script-src 'self' 'wasm-unsafe-eval'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).not.toMatch(/https?:|\*|'unsafe-(eval|inline)'/);
    expect(headers.get("cross-origin-opener-policy")).toBe("same-origin");
    expect(headers.get("cross-origin-embedder-policy")).toBe("require-corp");
    expect(headers.get("permissions-policy")).toContain("camera=(self)");
    expect(headers.get("x-powered-by")).toBeNull();
  });

  it.each([
    ["/phone/", "text/html; charset=utf-8", "no-cache"],
    ["/phone/pose/pose-landmarker-lite.task", "application/octet-stream", "no-cache"],
    ["/phone/pose/vision.wasm", "application/wasm", "no-cache"],
    ["/phone/manifest.webmanifest", "application/manifest+json; charset=utf-8", "no-cache"],
    ["/phone/assets/main-B4d5.js", "text/javascript; charset=utf-8", "public, max-age=31536000, immutable"],
    ["/ground/", "text/html; charset=utf-8", "no-cache"],
    ["/display-assets/ground-X1y2.css", "text/css; charset=utf-8", "public, max-age=31536000, immutable"],
  ])("W3 %s is %s", async (path, type, caching) => {
    const { headers, status } = await get(`${origin}${path}`);
    expect(status).toBe(200);
    expect(headers.get("content-type")).toBe(type);
    expect(headers.get("cache-control")).toBe(caching);
  });

  it("W3 an unchanged file is not sent again", async () => {
    const first = await get(`${origin}/phone/pose/vision.wasm`);
    const etag = first.headers.get("etag") ?? "";
    // Not by fetch, which asks for a fresh copy as soon as it is given an etag by hand.
    const status = await new Promise((resolve, reject) => {
      http
        .get(`${origin}/phone/pose/vision.wasm`, { headers: { "If-None-Match": etag } }, (answer) => {
          answer.resume();
          resolve(answer.statusCode);
        })
        .on("error", reject);
    });
    expect(status).toBe(304);
  });

  it("says what is missing: a page that is not built, a page that never was", async () => {
    const coach = await get(`${origin}/coach/`);
    expect(coach.status).toBe(404);
    expect(await coach.text()).toBe("This page is not built yet: stop the relay and run npm start.");
    expect(await (await get(`${origin}/nothing`)).text()).toBe("There is no such page here.");
    expect((await get(`${origin}/phone/../../../package.json`)).status).toBe(404);
  });
});
