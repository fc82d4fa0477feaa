import type { Server as HttpsServer } from "node:https";
import { roles } from "@overcue/shared-geometry/wire/hello";
import type { Pairing } from "@overcue/shared-geometry/wire/pairing";
import { Server } from "socket.io";
import { judgeHello } from "../pairing/judge-hello.ts";
import type { PracticeBook } from "../practice-book.ts";
import { answerWith } from "./answer-with.ts";
import { countDrops, type Drops } from "./drops.ts";
import { limits } from "./limits.ts";
import type { RelayContext } from "./relay-context.ts";
import type { RelayServer, RelaySocket } from "./relay-socket.ts";
import { serveCapture } from "./serve-capture.ts";
import { serveScreen } from "./serve-screen.ts";
import { welcome } from "./welcome.ts";

export interface RelayParts {
  readonly server: HttpsServer;
  readonly secret: string;
  readonly book: PracticeBook;
  readonly relayTime: () => number;
  /** Asked at each welcome: the addresses may have changed since. */
  readonly pairing: () => Pairing;
}

export interface Relay {
  readonly drops: Drops;
  /** Tells the ground screens new addresses. */
  tellPairing(): void;
  /** Disconnects everybody and closes the HTTPS server beneath. */
  close(): Promise<void>;
}

/** Opens the sockets: admits who knows the secret, then joins each page to its role and tells everybody who is there. */
export function openRelay({ server, secret, book, relayTime, pairing }: RelayParts): Relay {
  // Polling stays allowed: a browser whose user clicked through the certificate warning may refuse wss.
  // No connection state recovery: a page that comes back is told the whole state, and reps are resent until acknowledged.
  const io: RelayServer = new Server(server, {
    serveClient: false,
    maxHttpBufferSize: limits.messageBytes,
    pingInterval: limits.pingEveryMs,
    pingTimeout: limits.pingPatienceMs,
    transports: ["polling", "websocket"],
    perMessageDeflate: false,
    httpCompression: false,
  });
  const drops = countDrops(relayTime, (sentence) => io.to("display").emit("trouble", sentence));
  const last = { capture: null, captureState: null, checkpoint: null, rep: null, toldReps: new Set<string>() };
  const context: RelayContext = { io, book, drops, relayTime, last };

  countOversizedPosts(server, drops);

  io.use((socket, next) => {
    const verdict = judgeHello(socket.handshake.auth, secret);
    if (!verdict.ok) {
      next(Object.assign(new Error(verdict.why), { data: { code: verdict.code } }));
      return;
    }
    socket.data = { hello: verdict.hello };
    next();
  });

  io.on("connection", (socket) => {
    join(socket, context);
    guard("welcome", () => {
      welcome(socket, context, pairing());
    });
    tellPeers(io);
  });

  const stopListening = book.onChange(() => {
    guard("practice", () => io.emit("practice", book.state()));
  });

  /** A practice that cannot be shown is told; it never takes the relay or a rep with it. */
  function guard(event: string, tell: () => void): void {
    try {
      tell();
    } catch (error) {
      drops.drop("failed", event, error instanceof Error ? error.message : "for an unknown reason");
    }
  }

  return {
    drops,
    tellPairing: () => io.to("display").emit("pairing", pairing()),
    async close() {
      stopListening();
      await io.close();
    },
  };
}

function join(socket: RelaySocket, context: RelayContext): void {
  const { role } = socket.data.hello;
  const { io, drops, last, relayTime } = context;
  void socket.join(role);
  if (role === "capture") {
    last.capture = socket;
    serveCapture(socket, context);
  } else serveScreen(socket, context);
  socket.on("clock", (...args) => {
    answerWith(args)(relayTime());
  });

  const known = new Set<string>([
    "clock",
    "estimate",
    "checkpoint",
    "noRep",
    "rep",
    "captureState",
    "practice",
    "sessionView",
  ]);
  socket.onAny((event: string) => {
    if (!known.has(event)) drops.drop("unknown-event", event.slice(0, 40), "the relay knows no such message.");
    else if (socket.listenerCount(event) === 0) {
      drops.drop("not-for-this-role", event, `a ${role} page may not send it.`);
    }
  });
  socket.on("disconnect", (_reason, description) => {
    if (isTooLarge(description)) {
      drops.drop("oversized", "unknown", `it was over ${limits.messageBytes} bytes, so the ${role} was cut off.`);
    }
    if (last.capture === socket) {
      last.capture = newestCapture(io);
      last.captureState = null;
    }
    tellPeers(io);
  });
}

/** The websocket library cuts a sender off in the middle of a message that is too large; only its words say so here. */
function isTooLarge(description: unknown): boolean {
  return description instanceof Error && description.message.includes("Max payload size exceeded");
}

/** Over polling the same message is answered 413 and the connection lives on. */
function countOversizedPosts(server: HttpsServer, drops: Drops): void {
  server.on("request", (request, response) => {
    response.on("finish", () => {
      if (response.statusCode === 413 && request.url?.startsWith("/socket.io/") === true) {
        drops.drop("oversized", "unknown", `it was over ${limits.messageBytes} bytes.`);
      }
    });
  });
}

/** The phone that came last among those still here. */
function newestCapture(io: RelayServer): RelaySocket | null {
  const ids = [...(io.of("/").adapter.rooms.get("capture") ?? [])];
  return io.of("/").sockets.get(ids.at(-1) ?? "") ?? null;
}

function tellPeers(io: RelayServer): void {
  const count = (role: string): number => io.of("/").adapter.rooms.get(role)?.size ?? 0;
  const [capture, display, coach] = roles.map(count);
  io.emit("peers", { capture: capture ?? 0, display: display ?? 0, coach: coach ?? 0 });
}
