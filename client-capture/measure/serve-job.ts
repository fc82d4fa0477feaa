import { createReadStream } from "node:fs";
import { readFile, stat } from "node:fs/promises";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import { extname, join, normalize, sep } from "node:path";

export interface Job {
  /** The built client's folder. */
  readonly client: string;
  /** Null where the job needs no clip. */
  readonly clipPath: string | null;
  /** What the page is told at /job. */
  readonly description: unknown;
}

export interface ServedJob {
  readonly url: string;
  /** What the page posted at the end. */
  readonly answer: Promise<string>;
  close(): void;
}

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".wasm": "application/wasm",
};

const policy = "default-src 'self'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; worker-src 'self'";

/** Serves the built client and one clip on a loopback port of the system's choice, and takes one answer. */
export async function serveJob(job: Job): Promise<ServedJob> {
  let resolve: (answer: string) => void = () => undefined;
  const answer = new Promise<string>((done) => {
    resolve = done;
  });
  const server = createServer((request, response) => {
    handle(job, request, response, resolve).catch((error: unknown) => {
      response.statusCode = 500;
      response.end(String(error));
    });
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("serveJob: no port was given");
  return {
    url: `http://127.0.0.1:${String(address.port)}/phone/measure.html`,
    answer,
    close() {
      server.close();
      server.closeAllConnections();
    },
  };
}

async function handle(
  job: Job,
  request: IncomingMessage,
  response: ServerResponse,
  resolve: (answer: string) => void,
): Promise<void> {
  const path = decodeURIComponent(new URL(request.url ?? "/", "http://loopback").pathname);
  response.setHeader("content-security-policy", policy);
  if (request.method === "POST" && path === "/answer") {
    const parts: Buffer[] = [];
    for await (const part of request) parts.push(part as Buffer);
    response.end();
    resolve(Buffer.concat(parts).toString("utf8"));
    return;
  }
  if (path === "/job") {
    response.setHeader("content-type", "application/json");
    response.end(JSON.stringify(job.description));
    return;
  }
  if (path === "/clip" && job.clipPath !== null) {
    response.setHeader("content-length", (await stat(job.clipPath)).size);
    createReadStream(job.clipPath).pipe(response);
    return;
  }
  await sendFile(job.client, path, response);
}

async function sendFile(client: string, path: string, response: ServerResponse): Promise<void> {
  const file = normalize(join(client, path.replace(/^\/phone\//, "")));
  if (!path.startsWith("/phone/") || !file.startsWith(client + sep)) {
    response.statusCode = 404;
    response.end();
    return;
  }
  try {
    const bytes = await readFile(file);
    response.setHeader("content-type", types[extname(file)] ?? "application/octet-stream");
    response.end(bytes);
  } catch {
    response.statusCode = 404;
    response.end();
  }
}
