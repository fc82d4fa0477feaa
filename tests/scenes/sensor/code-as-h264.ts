import { createServer, type IncomingMessage, type Server } from "node:http";
import { PassThrough } from "node:stream";
import type { Picture } from "@overcue/client-capture/picture/picture";
import { launchChromium } from "../../../client-capture/measure/chromium.ts";
import { codeInPage, type CodeSettings } from "./h264-in-page.ts";

/** What a clip is made of: pictures with colour, all of one size. */
interface Shown {
  readonly picture: Picture;
}

/**
 * The same pictures as a clip shows them: coded as H.264 at so many bits a second and decoded again, by Chromium's own encoder and decoder. One comes for each that goes in, in order; the
 * next is asked for only as the coder has room. The coder shares its work between threads by how fast they are, so that its bytes are not the same from run to run. @throws Error with a sentence where this Chromium has no H.264, or where it leaves out a picture.
 */
export async function* codeAsH264<Frame extends Shown>(
  frames: Iterable<Frame>,
  settings: CodeSettings,
): AsyncGenerator<Frame> {
  const source = frames[Symbol.iterator]();
  const waiting: Frame[] = [];
  const coded = new PassThrough({ objectMode: true });
  const server = await serve(
    () => {
      const next = source.next();
      if (next.done === true) return null;
      waiting.push(next.value);
      return bytesOf(next.value.picture);
    },
    (bytes) => {
      coded.write(bytes);
    },
  );
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    await page.goto(originOf(server));
    const done = page.evaluate(codeInPage, settings).then(
      () => {
        coded.end();
      },
      (error: unknown) => {
        coded.destroy(error instanceof Error ? error : new Error(String(error)));
      },
    );
    for await (const bytes of coded as AsyncIterable<Buffer>) {
      const frame = waiting.shift();
      if (frame === undefined) throw new Error("The coder gave back more pictures than it got.");
      yield { ...frame, picture: pictureOf(bytes, settings) };
    }
    await done;
    if (waiting.length > 0) throw new Error(`The coder left out ${String(waiting.length)} pictures.`);
  } finally {
    await browser.close();
    server.close();
    server.closeAllConnections();
  }
}

function bytesOf({ luma, chroma }: Picture): Buffer {
  if (chroma === null) throw new Error("A clip's pictures have colour: this one has none.");
  return Buffer.concat([luma, chroma.blue, chroma.red]);
}

function pictureOf(bytes: Buffer, { width, height }: CodeSettings): Picture {
  const half = Math.ceil(width / 2) * Math.ceil(height / 2);
  const size = width * height;
  return {
    width,
    height,
    luma: bytes.subarray(0, size),
    chroma: { blue: bytes.subarray(size, size + half), red: bytes.subarray(size + half, size + 2 * half) },
  };
}

/** Gives out pictures at /next until there are none, and takes coded ones at /coded. */
async function serve(next: () => Buffer | null, take: (bytes: Buffer) => void): Promise<Server> {
  const server = createServer((request, response) => {
    if (request.url === "/next") {
      const bytes = next();
      response.statusCode = bytes === null ? 204 : 200;
      response.end(bytes ?? undefined);
    } else if (request.url === "/coded") {
      void bodyOf(request).then((bytes) => {
        take(bytes);
        response.end();
      });
    } else {
      response.setHeader("content-type", "text/html");
      response.end("<!doctype html><title>Coder</title>");
    }
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return server;
}

function originOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("No port was given.");
  return `http://127.0.0.1:${String(address.port)}/`;
}

async function bodyOf(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}
