import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server } from "node:http";
import { extname, join, normalize } from "node:path";
import type { Page } from "playwright-core";
import { build } from "vite";
import { launchChromium } from "../chromium.ts";

const root = join(import.meta.dirname, "../../..");
const built = join(root, "build/demo-page");
const kinds: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript" };

export interface OpenDemoPage {
  readonly page: Page;
  close(): Promise<void>;
}

/** Builds the demo golfer's test page, serves it on loopback and opens it in Chromium. `takePicture` gets what the page sends. */
export async function openDemoPage(takePicture: (bytes: Buffer) => Promise<void> | void): Promise<OpenDemoPage> {
  await build({
    root: join(import.meta.dirname, "page"),
    base: "./",
    logLevel: "warn",
    build: { outDir: built, emptyOutDir: true, target: "es2022", chunkSizeWarningLimit: 2000 },
  });
  const server = createServer((request, response) => {
    void answer(request, takePicture).then(({ status, type, body }) => {
      response.writeHead(status, { "content-type": type }).end(body);
    });
  });
  const port = await listen(server);
  const browser = await launchChromium();
  const page = await browser.newPage();
  const close = async (): Promise<void> => {
    await browser.close();
    server.closeAllConnections();
    server.close();
  };
  try {
    await page.goto(`http://127.0.0.1:${String(port)}/index.html`);
    await page.waitForFunction(() => globalThis.demoPage !== undefined);
  } catch (error) {
    await close();
    throw error;
  }
  return { page, close };
}

interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: Buffer | string;
}

async function answer(request: IncomingMessage, takePicture: (bytes: Buffer) => Promise<void> | void): Promise<Answer> {
  const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
  if (request.method === "POST") {
    const parts: Buffer[] = [];
    for await (const part of request as AsyncIterable<Buffer>) parts.push(part);
    await takePicture(Buffer.concat(parts));
    return { status: 200, type: "text/plain", body: "" };
  }
  try {
    const body = await readFile(join(built, normalize(pathname)));
    return { status: 200, type: kinds[extname(pathname)] ?? "application/octet-stream", body };
  } catch {
    return { status: 404, type: "text/plain", body: "not here" };
  }
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve) => {
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : 0);
    });
  });
}
