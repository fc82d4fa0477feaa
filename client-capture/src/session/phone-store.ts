import { createStore, type StoreApi } from "zustand/vanilla";
import type { Calibration } from "@overcue/shared-geometry/camera";
import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { Peers } from "@overcue/shared-geometry/wire/hello";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { RepKind } from "@overcue/shared-geometry/wire/rep";
import type { CameraView } from "../checks/camera-view.ts";
import type { CertificateState } from "../checks/certificate-check.ts";
import type { TopSeen } from "../checks/follow-top.ts";
import type { Framing } from "../checks/framing.ts";
import type { RodChoice } from "../checks/rod-check.ts";
import type { SourceInfo } from "../frames/frame-source.ts";
import type { AppState } from "../installed/watch-install.ts";
import type { LinkState } from "../link/open-uplink.ts";
import type { HandsStatus } from "../pipeline/hands-status.ts";
import type { PoseDelegate, PoseModel } from "../workers/pose-messages.ts";
import { rememberedPlaces, type Places } from "./place-memory.ts";

export type Screen = "choose" | "cautions" | "live" | "station" | "practice" | "help";

/** How the shaft and hands stand, told a few times a second: the picture itself shows every frame. */
export interface Finding {
  readonly shaft: "tracked" | "predicted" | "lost" | "nothing-yet";
  readonly reason: ShaftReason | null;
  readonly hands: HandsStatus;
}

/** What the phone's own screens need of the practice. */
export type PhonePractice = Pick<
  PracticeState,
  "stage" | "rodOn" | "mode" | "paused" | "repsInBlock" | "blockSize" | "golfer"
>;

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
  /** Pictures of the source that were looked at, whatever was found; that it gave and nobody had time for; that could not be read. */
  readonly lookedFrames: number;
  readonly missedFrames: number;
  readonly failedFrames: number;
  readonly lastFailure: string | null;
  readonly unsentReps: number;
  /** Why the relay last refused a rep; null where it did not. */
  readonly repTrouble: string | null;
  /** What the watch over the sticks last had to say, as a sentence; empty where there is nothing. */
  readonly stationNews: string;
  readonly reps: number;
  readonly lastRep: { readonly kind: RepKind; readonly complete: boolean } | null;
  readonly hasTorch: boolean;
  readonly torchOn: boolean;
  readonly battery: number | null;
  /** What stopped the last attempt, as a sentence; null where nothing did. */
  readonly trouble: string | null;
  /** Sentences to act upon, most urgent first. */
  readonly warnings: readonly string[];
  readonly certificate: CertificateState;
  /** The browser has kept the whole page. */
  readonly kept: boolean;
  readonly app: AppState;
  /** The relay serves a newer page than this one. */
  readonly newerPage: boolean;
  readonly practice: PhonePractice | null;
  readonly places: Places;
  /** Where the solved camera stands; null where none was solved. */
  readonly view: CameraView | null;
  readonly framing: Framing;
  readonly top: TopSeen;
  /** Mean brightness of the picture, 0 to 255; null before the first one. */
  readonly brightness: number | null;
  readonly exposureMs: number | null;
  readonly rod: RodChoice;
  /** The next tap on the picture is on the rod. */
  readonly tappingRod: boolean;
  /** What came of the last tap, as a sentence; empty where there is nothing to say. */
  readonly rodNote: string;
  readonly spaceClear: boolean;
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
  lookedFrames: 0,
  missedFrames: 0,
  failedFrames: 0,
  lastFailure: null,
  hasTorch: false,
  torchOn: false,
  stationNews: "",
  warnings: [],
  view: null,
  framing: "nobody",
  top: "never",
  brightness: null,
  exposureMs: null,
  rod: { is: "not-said" },
  tappingRod: false,
  rodNote: "",
  spaceClear: false,
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
    certificate: "looking",
    kept: false,
    app: { standalone: false, install: null },
    newerPage: false,
    practice: null,
    places: rememberedPlaces(),
  }));
