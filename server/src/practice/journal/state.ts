import type { BandId } from "@overcue/shared-geometry/bands";
import type { ClubId } from "@overcue/shared-geometry/station";
import type { Metres } from "@overcue/shared-geometry/units";
import type { PracticeState, RetentionKind, StageId, Verdict } from "@overcue/shared-geometry/wire/practice";
import type { Arrives } from "../cue/arrives.ts";
import type { CueProposal } from "../cue/propose-cue.ts";
import type { Cue } from "../cue/start-cue.ts";
import type { Drill, PlaceCheckpoint } from "../drill/drill-schema.ts";
import type { CarryOver } from "../figures/carry-over.ts";
import type { Place } from "../figures/place.ts";
import type { PlaceSummary } from "../figures/summarise-places.ts";
import type { Feedback } from "../stage/stages.ts";
import type { RelayTime } from "../units.ts";
import type { Golfer, StationRecord } from "./events.ts";

export type PerCheckpoint<T> = Readonly<Partial<Record<PlaceCheckpoint, T>>>;

/** A rep that counts, with the places that were to be felt when it was made (y, metres). */
export interface CountedRep {
  readonly repId: string;
  readonly places: readonly Place[];
  readonly shown: PerCheckpoint<Metres>;
}

/** Reps without feedback: the golfer's own way, per club. */
export interface Baseline {
  readonly reps: readonly CountedRep[];
  readonly finished: boolean;
}

/** One checkpoint of a finished block. */
export interface BlockPlace {
  readonly checkpoint: PlaceCheckpoint;
  readonly summary: PlaceSummary;
  /** The mean of what was shown in the block's reps. */
  readonly exaggerateBy: Metres;
  readonly carryOver: CarryOver | null;
}

export interface Block {
  readonly at: RelayTime;
  readonly stage: StageId;
  readonly reps: readonly string[];
  readonly passed: boolean;
  readonly places: readonly BlockPlace[];
}

/** How far a golfer has come with one drill and one club. */
export interface Ladder {
  readonly stage: StageId;
  /** Set by a fall-back: the rod is on for the next block even where the stage goes without. */
  readonly rodBack: boolean;
  readonly feedback: Feedback;
  readonly repsInStage: number;
  readonly cues: PerCheckpoint<Cue>;
  readonly arrives: PerCheckpoint<Arrives>;
  readonly proposals: PerCheckpoint<CueProposal>;
  readonly block: readonly CountedRep[];
  readonly blocks: readonly Block[];
  /** One sentence on the last finished block. */
  readonly lastJudgement: string | null;
}

export interface SessionRep {
  readonly repId: string;
  readonly at: RelayTime;
  readonly places: readonly Place[];
  readonly leftOut: string | null;
}

export interface Session {
  readonly id: string;
  readonly startedAt: RelayTime;
  readonly reps: readonly SessionRep[];
}

export interface RetentionTest {
  readonly kind: RetentionKind;
  readonly at: RelayTime;
  readonly places: readonly {
    readonly checkpoint: PlaceCheckpoint;
    readonly summary: PlaceSummary;
    readonly carryOver: CarryOver | null;
  }[];
}

export interface FeltGap {
  readonly repId: string;
  readonly checkpoint: PlaceCheckpoint;
  readonly felt: Metres;
  readonly measured: Metres;
}

/** All that is known of one golfer. */
export interface GolferBook {
  readonly golfer: Golfer;
  readonly station: StationRecord;
  readonly drillId: string;
  readonly mode: PracticeState["mode"];
  readonly cueMode: PracticeState["cueMode"];
  /** Who locked the cue; null where it is free. */
  readonly lockedBy: string | null;
  readonly feltQuestion: boolean;
  /** The free drill's choice. */
  readonly wanted: PerCheckpoint<BandId>;
  readonly baselines: Readonly<Partial<Record<ClubId, Baseline>>>;
  /** By club and drill: see `ladderKey`. */
  readonly ladders: Readonly<Record<string, Ladder>>;
  readonly session: Session | null;
  readonly test: { readonly kind: RetentionKind; readonly reps: readonly CountedRep[] } | null;
  readonly tests: readonly RetentionTest[];
  readonly lastPracticeAt: RelayTime | null;
  readonly offer: RetentionKind | null;
  readonly feltGaps: readonly FeltGap[];
  readonly notes: readonly { readonly at: RelayTime; readonly by: string; readonly text: string }[];
  readonly starred: readonly string[];
  readonly verdict: Verdict | null;
  /** The verdict that waits for the felt answer. */
  readonly heldBack: { readonly checkpoint: PlaceCheckpoint; readonly verdict: Verdict } | null;
  readonly repsInAll: number;
}

/** The whole practice: the fold of the journal. Holds nothing that depends on a clock or on chance. */
export interface Practice {
  readonly golfers: Readonly<Record<string, GolferBook>>;
  readonly current: string | null;
  /** The users' own drills, by id. */
  readonly drills: Readonly<Record<string, Drill>>;
  readonly paused: boolean;
  readonly muted: boolean;
  readonly view: PracticeState["view"];
}

export const emptyPractice: Practice = {
  golfers: {},
  current: null,
  drills: {},
  paused: false,
  muted: false,
  view: "live",
};

export const ladderKey = (club: ClubId, drillId: string): string => `${club} ${drillId}`;
