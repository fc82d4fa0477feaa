import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { CaptureState, Peers } from "@overcue/shared-geometry/wire/hello";
import type { Pairing } from "@overcue/shared-geometry/wire/pairing";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint, NoRep, Rep } from "@overcue/shared-geometry/wire/rep";
import { createStore, type StoreApi } from "zustand/vanilla";

/** How the page stands with the relay. */
export type LinkState =
  | { readonly kind: "unpaired" }
  | { readonly kind: "connecting" }
  | { readonly kind: "connected" }
  | { readonly kind: "lost" }
  | { readonly kind: "refused"; readonly why: string };

/** All that a screen knows of the relay, except live estimates. */
export interface ScreenState {
  readonly link: LinkState;
  readonly peers: Peers | null;
  readonly pairing: Pairing | null;
  readonly capture: CaptureState | null;
  readonly practice: PracticeState | null;
  /** The checkpoint last passed in the rep under way, as the live estimates have it. */
  readonly passed: CheckpointId | null;
  /** The checkpoint that the club is held at, as they have it. */
  readonly held: CheckpointId | null;
  /** Checkpoints of the newest rep told live, in the order told; a corrected one takes its predecessor's place. */
  readonly checkpoints: readonly LiveCheckpoint[];
  /** Newest last. */
  readonly reps: readonly Rep[];
  /** The newest movement that was no rep. */
  readonly noRep: NoRep | null;
  readonly trouble: string | null;
  /** Messages that broke their schema. */
  readonly badMessages: number;
}

export type ScreenStore = StoreApi<ScreenState>;

const repsKept = 30;

export const createScreenStore = (): ScreenStore =>
  createStore<ScreenState>(() => ({
    link: { kind: "connecting" },
    peers: null,
    pairing: null,
    capture: null,
    practice: null,
    passed: null,
    held: null,
    checkpoints: [],
    reps: [],
    noRep: null,
    trouble: null,
    badMessages: 0,
  }));

export function addCheckpoint(state: ScreenState, told: LiveCheckpoint): Partial<ScreenState> {
  const ofThisRep = state.checkpoints.filter((known) => known.repId === told.repId);
  const others = ofThisRep.filter((known) => known.reading.checkpoint !== told.reading.checkpoint);
  return { checkpoints: [...others, told] };
}

/** What was told live of a movement that was no rep is taken back; the list of another rep's stays the same one, for a new one would be told anew. */
export function dropRep({ checkpoints }: ScreenState, noRep: NoRep): Partial<ScreenState> {
  const others = checkpoints.filter((told) => told.repId !== noRep.repId);
  return { checkpoints: others.length < checkpoints.length ? others : checkpoints, noRep };
}

export function addRep(state: ScreenState, rep: Rep): Partial<ScreenState> {
  const others = state.reps.filter((known) => known.id !== rep.id);
  return { reps: [...others, rep].slice(-repsKept) };
}
