import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import type { LiveCheckpoint, Rep } from "@overcue/shared-geometry/wire/rep";
import type { PracticeBook } from "../practice-book.ts";
import type { Drops } from "./drops.ts";
import type { RelayServer, RelaySocket } from "./relay-socket.ts";

/** What all connections of one run share. */
export interface RelayContext {
  readonly io: RelayServer;
  readonly book: PracticeBook;
  readonly drops: Drops;
  readonly relayTime: () => number;
  readonly last: LastState;
}

/** What a page that joins late is told at once. Estimates are not among it: an old one would look live. */
export interface LastState {
  /** The phone whose live messages count: the one that came last. */
  capture: RelaySocket | null;
  captureState: CaptureState | null;
  checkpoint: LiveCheckpoint | null;
  rep: Rep | null;
  /** Ids of the reps that the screens were told of, oldest first. */
  readonly toldReps: Set<string>;
}

/** The room of a role; estimates go to these two only. */
export const screens = ["display", "coach"];
