import { createServer } from "node:https";
import { makeAuthority } from "@overcue/server/tls/make-authority";
import { makeLeaf } from "@overcue/server/tls/make-leaf";
import { subjectNames } from "@overcue/server/tls/subject-names";
import { WebSocketServer, type WebSocket } from "ws";

/**
 * What the relay is measured against, a process of its own: over the same TLS, every message goes as it came to every
 * socket that opened "/out". No parsing, no roles, no rooms. Prints its port, and ends by a signal.
 */
const authority = await makeAuthority("load", new Date());
const leaf = await makeLeaf(authority, subjectNames([], "localhost"), new Date());
const server = createServer({ cert: leaf.certificate, key: leaf.key });
const receivers = new Set<WebSocket>();

new WebSocketServer({ server, perMessageDeflate: false }).on("connection", (socket, request) => {
  if (request.url === "/out") {
    receivers.add(socket);
    socket.on("close", () => receivers.delete(socket));
  } else {
    socket.on("message", (data, isBinary) => {
      for (const receiver of receivers) receiver.send(data, { binary: isBinary });
    });
  }
});

server.listen(0, "127.0.0.1", () => {
  const address = server.address();
  process.stdout.write(`port ${String(typeof address === "object" ? address?.port : "")}\n`);
});
