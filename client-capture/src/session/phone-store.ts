import { createStore, type StoreApi } from "zustand/vanilla";
import type { Calibration } from "@overcue/shared-geometry/camera";
import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { Peers } from "@overcue/shared-geometry/wire/hello";
import type { RepKind } from "@overcue/shared-geometry/wire/rep";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { LinkState } from "../link/open-uplink.ts";
import type { HandsStatus } from "../pipeline/hands-status.ts";
import type { PoseDelegate, PoseModel } from "../workers/pose-messages.ts";

export type Screen = "choose" | "live" | "station" | "practice";

/** How the shaft and hands stand, told a few times a second: the picture itself shows every frame. */
export interface Finding {
  readonly shaft: "tracked" | "predicted" | "lost" | "nothing-yet";
  readonly reason: ShaftReason | null;
  readonly hands: HandsStatus;
}

export interface PhoneState {
  readonly link: LinkState | { readonly is: "unpaired" };
  readonly peers: Peers | null;
  readonly screen: Screen;
  /** What is being opened, as a sentence part; null otherwise. */
  readonly opening: string | null;
  readonly source: SourceInfo | null;
  readonly pose: { readonly model: PoseModel; readonly delegate: PoseDelegate } | null;
  readonly calibration: Calibration;
  readonly finding: Finding;
  readonly framesPerSecond: number;
  readonly posesPerSecond: number;
  readonly failedFrames: number;
  readonly lastFailure: string | null;
  readonly unsentReps: number;
  /** Why the relay last refused a rep; null where it did not. */
  readonly repTrouble: string | null;
  readonly reps: number;
  readonly lastRep: { readonly kind: RepKind; readonly complete: boolean } | null;
  readonly hasTorch: boolean;
  readonly torchOn: boolean;
  readonly battery: number | null;
  /** What stopped the last attempt, as a sentence; null where nothing did. */
  readonly trouble: string | null;
  /** Sentences to act upon, most urgent first. */
  readonly warnings: readonly string[];
}

export type PhoneStore = StoreApi<PhoneState>;

export const nothingFound: Finding = { shaft: "nothing-yet", reason: null, hands: "lost" };

/** What a source's end takes back: everything that belongs to it and nothing else. */
export const withoutSource = {
  source: null,
  opening: null,
  calibration: "uncalibrated",
  finding: nothingFound,
  framesPerSecond: 0,
  posesPerSecond: 0,
  failedFrames: 0,
  lastFailure: null,
  hasTorch: false,
  torchOn: false,
  warnings: [],
} as const satisfies Partial<PhoneState>;

export const createPhoneStore = (): PhoneStore =>
  createStore<PhoneState>(() => ({
    ...withoutSource,
    link: { is: "unpaired" },
    peers: null,
    screen: "choose",
    pose: null,
    unsentReps: 0,
    repTrouble: null,
    reps: 0,
    lastRep: null,
    battery: null,
    trouble: null,
  }));
