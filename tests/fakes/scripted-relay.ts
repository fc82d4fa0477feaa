import { createServer, type Server as HttpServer } from "node:http";
import { readFile } from "node:fs/promises";
import { extname, join, normalize } from "node:path";
import { helloSchema, type CaptureState, type Hello, type Peers } from "@overcue/shared-geometry/wire/hello";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import { pairingAddress, type Pairing } from "@overcue/shared-geometry/wire/pairing";
import {
  practiceCommandSchema,
  type PracticeCommand,
  type PracticeState,
  type SessionView,
} from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint, NoRep, Rep } from "@overcue/shared-geometry/wire/rep";
import { Server, type Socket } from "socket.io";

/**
 * A relay that says what a test tells it to say: a real socket server on a free loopback port that serves the built
 * pages and keeps what the pages asked for. It decides nothing by itself; the true relay has tests of its own.
 */
export interface ScriptedRelay {
  readonly origin: string;
  readonly secret: string;
  readonly address: (page: "ground" | "coach") => string;
  readonly say: Said;
  /** What pages asked for, in order. */
  readonly commands: readonly PracticeCommand[];
  readonly hellos: readonly Hello[];
  /** What a command is answered; null for yes. */
  readonly refuseWith: (why: string | null) => void;
  /** Says something again and again until the relay closes. */
  readonly keepSaying: (everyMs: number, say: () => void) => void;
  readonly setSessionView: (view: SessionView) => void;
  /** Cuts every socket, as a relay that stops would. */
  readonly dropAll: () => void;
  /** Answers nothing on the sockets' address, as if no relay were there. */
  readonly refuseConnections: (refused: boolean) => void;
  readonly close: () => Promise<void>;
}

/** Each stays said: a page that joins later hears the last of each kind, estimates and what was no rep excepted. */
interface Said {
  readonly peers: (peers: Peers) => void;
  readonly pairing: (pairing: Pairing) => void;
  readonly captureState: (state: CaptureState) => void;
  readonly practice: (state: PracticeState) => void;
  readonly checkpoint: (checkpoint: LiveCheckpoint) => void;
  readonly rep: (rep: Rep) => void;
  readonly trouble: (sentence: string) => void;
  readonly noRep: (noRep: NoRep) => void;
  readonly estimate: (estimate: Estimate) => void;
  /** Anything at all, to see that pages refuse it. */
  readonly raw: (event: string, message: unknown) => void;
}

const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
};

/** At least as strict as the relay's own: these pages need nothing but what they are served with. */
const contentPolicy = "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'none'";

export interface ScriptedRelayOptions {
  /** The folder with the built pages. */
  readonly pages: string;
  readonly clock?: () => number;
  readonly port?: number;
}

export async function startScriptedRelay(options: ScriptedRelayOptions): Promise<ScriptedRelay> {
  const clock = options.clock ?? ((): number => Date.now());
  const secret = "scripted-relay-secret-0123456789";
  const http = createServer((request, response) => {
    void serveFile(options.pages, new URL(request.url ?? "/", "http://relay").pathname).then((file) => {
      if (file === null) response.writeHead(404).end();
      else response.writeHead(200, { ...file.headers, "content-security-policy": contentPolicy }).end(file.body);
    });
  });
  const io = new Server(http, {
    serveClient: false,
    allowRequest: (_request, answer) => {
      answer(null, !away);
    },
  });
  const commands: PracticeCommand[] = [];
  const hellos: Hello[] = [];
  const remembered = new Map<string, unknown>();
  let refusal: string | null = null;
  let away = false;
  const timers: NodeJS.Timeout[] = [];
  let view: SessionView = { blocks: [], retentionTests: [], notes: [], feltGaps: [], reps: [] };

  io.use((socket, next) => {
    const hello = helloSchema.safeParse(socket.handshake.auth);
    if (hello.success && hello.data.secret === secret) {
      hellos.push(hello.data);
      next();
    } else next(new Error("The pairing code is not this run's: scan it again."));
  });
  io.on("connection", (socket: Socket) => {
    socket.on("clock", (answer: (time: number) => void) => {
      answer(clock());
    });
    socket.on("practice", (command: unknown, answer: (result: unknown) => void) => {
      commands.push(practiceCommandSchema.parse(command));
      answer(refusal === null ? { ok: true } : { ok: false, why: refusal });
    });
    socket.on("sessionView", (answer: (view: SessionView) => void) => {
      answer(view);
    });
    for (const [event, message] of remembered) socket.emit(event, message);
  });

  const tell =
    (event: string) =>
    (message: unknown): void => {
      remembered.set(event, message);
      io.emit(event, message);
    };
  const port = await listen(http, options.port ?? 0);
  const origin = `http://127.0.0.1:${port}`;
  return {
    origin,
    secret,
    address: (page) => pairingAddress(origin, page === "ground" ? "display" : "coach", secret),
    say: {
      peers: tell("peers"),
      pairing: tell("pairing"),
      captureState: tell("captureState"),
      practice: tell("practice"),
      checkpoint: tell("checkpoint"),
      rep: tell("rep"),
      trouble: tell("trouble"),
      estimate: (estimate) => io.emit("estimate", estimate),
      noRep: (noRep) => io.emit("noRep", noRep),
      raw: (event, message) => io.emit(event, message),
    },
    commands,
    hellos,
    refuseWith: (why) => {
      refusal = why;
    },
    keepSaying: (everyMs, say) => {
      timers.push(setInterval(say, everyMs));
    },
    setSessionView: (next) => {
      view = next;
    },
    refuseConnections: (refused) => {
      away = refused;
    },
    dropAll: () => {
      io.disconnectSockets(true);
    },
    close: async () => {
      for (const timer of timers) clearInterval(timer);
      await io.close();
    },
  };
}

async function serveFile(
  folder: string,
  path: string,
): Promise<{ readonly body: Buffer; readonly headers: Record<string, string> } | null> {
  const wanted = normalize(path.endsWith("/") ? `${path}index.html` : path);
  if (wanted.includes("..")) return null;
  try {
    const body = await readFile(join(folder, wanted));
    return { body, headers: { "content-type": contentTypes[extname(wanted)] ?? "application/octet-stream" } };
  } catch {
    return null;
  }
}

async function listen(http: HttpServer, port: number): Promise<number> {
  await new Promise<void>((resolve) => http.listen(port, "127.0.0.1", resolve));
  const address = http.address();
  if (address === null || typeof address === "string") throw new Error("the scripted relay has no port");
  return address.port;
}
