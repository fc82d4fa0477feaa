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
  readonly reconnection?: boolean;
}

/** A page's socket to a relay on this machine whose certificate nobody vouches for. Not yet known to be admitted. */
export function openSocket(origin: string, role: Role, joining: Joining): Client {
  const { secret, protocol = protocolVersion, name = "", transports = ["websocket"], reconnection = false } = joining;
  return io(origin, {
    auth: { role, secret, protocol, name },
    transports,
    reconnection,
    forceNew: true,
    rejectUnauthorized: false,
  });
}

/** Resolves when the relay admits the socket. @throws its refusal. */
export async function joinRelay(origin: string, role: Role, joining: Joining): Promise<Client> {
  const socket = openSocket(origin, role, joining);
  await new Promise<void>((resolve, reject) => {
    socket.once("connect", resolve);
    socket.once("connect_error", reject);
  });
  return socket;
}
