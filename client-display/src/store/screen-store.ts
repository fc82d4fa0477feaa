import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { CaptureState, Peers } from "@overcue/shared-geometry/wire/hello";
import type { Pairing } from "@overcue/shared-geometry/wire/pairing";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { LiveCheckpoint, Rep } from "@overcue/shared-geometry/wire/rep";
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
    trouble: null,
    badMessages: 0,
  }));

export function addCheckpoint(state: ScreenState, told: LiveCheckpoint): Partial<ScreenState> {
  const ofThisRep = state.checkpoints.filter((known) => known.repId === told.repId);
  const others = ofThisRep.filter((known) => known.reading.checkpoint !== told.reading.checkpoint);
  return { checkpoints: [...others, told] };
}

export function addRep(state: ScreenState, rep: Rep): Partial<ScreenState> {
  const others = state.reps.filter((known) => known.id !== rep.id);
  return { reps: [...others, rep].slice(-repsKept) };
}
