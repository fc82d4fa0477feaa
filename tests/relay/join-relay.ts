import type { FromRelay, ToRelay } from "@overcue/shared-geometry/wire/events";
import type { Role } from "@overcue/shared-geometry/wire/hello";
import { protocolVersion } from "@overcue/shared-geometry/wire/version";
import { io, type Socket } from "socket.io-client";

export type Client = Socket<FromRelay, ToRelay>;

export interface Joining {
  readonly secret: string;
  readonly protocol?: number;
  readonly name?: string;
  readonly transports?: ("polling" | "websocket")[];
  /** Whether it comes back by itself, as pages do; off by default so that a test sees each end. */
  readonly reconnection?: boolean;
}

/** A joined page with everything that it was told so far, in order. */
export interface Joined {
  readonly socket: Client;
  readonly heard: readonly { readonly event: string; readonly args: readonly unknown[] }[];
}

/** A page's socket to a relay on this machine whose certificate nobody vouches for. Not yet known to be admitted. */
export function openSocket(origin: string, role: Role, joining: Joining): Client {
  const { secret, protocol = protocolVersion, name = "", transports = ["websocket"], reconnection = false } = joining;
  return io(origin, {
    auth: { role, secret, protocol, name },
    transports,
    reconnection,
    reconnectionDelay: 50,
    forceNew: true,
    rejectUnauthorized: false,
  });
}

/** Resolves when the relay has admitted the socket and welcomed it. @throws its refusal. */
export async function joinRelay(origin: string, role: Role, joining: Joining): Promise<Joined> {
  const socket = openSocket(origin, role, joining);
  const heard: { event: string; args: readonly unknown[] }[] = [];
  socket.onAny((event: string, ...args: unknown[]) => heard.push({ event, args }));
  await new Promise<void>((resolve, reject) => {
    socket.once("connect", resolve);
    socket.once("connect_error", reject);
  });
  await settle(socket);
  return { socket, heard };
}

/**
 * Resolves when the relay has handled all that this socket sent before, and the socket has heard all that the relay sent
 * it before answering: messages keep their order both ways.
 */
export async function settle(socket: Client): Promise<number> {
  return new Promise((resolve) => socket.emit("clock", resolve));
}

/** What a page was told under one event name, oldest first. */
export function heardOf(page: Joined, event: keyof FromRelay): unknown[] {
  return page.heard.filter((entry) => entry.event === event).map((entry) => entry.args[0]);
}
