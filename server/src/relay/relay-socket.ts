import type { FromRelay, ToRelay } from "@overcue/shared-geometry/wire/events";
import type { Hello } from "@overcue/shared-geometry/wire/hello";
import type { DefaultEventsMap, Server, Socket } from "socket.io";

/** Nothing that arrives has its type yet: every argument is parsed at the door. */
type Untrusted = { [Event in keyof ToRelay]: (...args: unknown[]) => void };

export interface SocketData {
  readonly hello: Hello;
}

export type RelayServer = Server<Untrusted, FromRelay, DefaultEventsMap, SocketData>;
export type RelaySocket = Socket<Untrusted, FromRelay, DefaultEventsMap, SocketData>;
