import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server } from "node:http";
import { extname, join, normalize } from "node:path";
import type { Page } from "playwright-core";
import { build } from "vite";
import { WebSocketServer, type WebSocket } from "ws";
import { launchChromium } from "../chromium.ts";

const root = join(import.meta.dirname, "../../..");
const built = join(root, "build/demo-page");
const kinds: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript" };

export interface OpenDemoPage {
  readonly page: Page;
  close(): Promise<void>;
}

type TakePicture = (bytes: Buffer) => Promise<void> | void;

/** Builds the demo golfer's test page, serves it on loopback and opens it in Chromium. `takePicture` gets what the page sends. */
export async function openDemoPage(takePicture: TakePicture): Promise<OpenDemoPage> {
  await build({
    root: join(import.meta.dirname, "page"),
    base: "./",
    logLevel: "warn",
    build: { outDir: built, emptyOutDir: true, target: "es2022", chunkSizeWarningLimit: 2000 },
  });
  const server = createServer((request, response) => {
    void answer(request).then(({ status, type, body }) => {
      response.writeHead(status, { "content-type": type }).end(body);
    });
  });
  new WebSocketServer({ server, perMessageDeflate: false }).on("connection", (socket) => {
    socket.on("message", (picture: Buffer) => void take(socket, picture, takePicture));
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

/** Answers when the picture has been taken; the page waits for that before it sends the next. */
async function take(socket: WebSocket, picture: Buffer, takePicture: TakePicture): Promise<void> {
  try {
    await takePicture(picture);
    socket.send("taken");
  } catch (error) {
    socket.close(1011, String(error).slice(0, 100));
  }
}

interface Answer {
  readonly status: number;
  readonly type: string;
  readonly body: Buffer | string;
}

async function answer(request: IncomingMessage): Promise<Answer> {
  const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
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
