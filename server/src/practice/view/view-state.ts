import { bandAt } from "@overcue/shared-geometry/band-interval";
import type { Aim, PracticeState, Proposal } from "@overcue/shared-geometry/wire/practice";
import { namePattern } from "../baseline/name-pattern.ts";
import { capOf } from "../cue/start-cue.ts";
import { feltStretch } from "../cue/round-cue.ts";
import { builtInDrills } from "../drill/built-in/built-in-drills.ts";
import { placeCheckpointIds } from "../drill/drill-schema.ts";
import { resolveStretch } from "../drill/resolve-stretch.ts";
import type { GolferBook, Ladder, Practice } from "../journal/state.ts";
import { drillOf, feltPlace, ladderOf, layoutOf, targetsOf, type Target } from "../journal/targets.ts";
import { practiceSettings } from "../settings.ts";
import { isAnswered } from "../speak/feedback-plan.ts";
import { stages } from "../stage/stages.ts";
import { adviseOn } from "./advise.ts";
import { offerSentence } from "./offer-sentence.ts";

/** What the journal says beside the practice itself. */
export interface Revision {
  readonly revision: number;
  readonly lastChange: PracticeState["lastChange"];
}

/** The practice of the current golfer as pages are told it. */
export function viewState(practice: Practice, book: GolferBook, { revision, lastChange }: Revision): PracticeState {
  const layout = layoutOf(book);
  const ladder = ladderOf(book);
  const drill = drillOf(book, practice);
  const targets = targetsOf(book, practice);
  const [done, size] = progress(book, ladder);
  return {
    revision,
    golfer: book.golfer,
    golfers: Object.values(practice.golfers).map(({ golfer }) => golfer),
    club: book.station.club,
    drill: {
      id: drill.id,
      name: drill.name,
      summary: drill.summary,
      source: drill.source,
      layOut: drill.layOut,
      say: drill.say,
      cautions: drill.cautions,
      corridor: drill.corridor && resolveStretch(drill.corridor, layout),
    },
    drills: [
      ...builtInDrills.map(({ id, name }) => ({ id, name, builtIn: true })),
      ...Object.values(practice.drills).map(({ id, name }) => ({ id, name, builtIn: false })),
    ],
    layout,
    stage: ladder.stage,
    mode: book.mode,
    aims: targets.map((target) => viewAim(target, book, ladder)),
    proposals: viewProposals(ladder),
    cueMode: book.cueMode,
    cueLocked: book.lockedBy !== null,
    rodOn: stages[ladder.stage].rod || ladder.rodBack,
    paused: practice.paused,
    muted: practice.muted,
    view: practice.view,
    feedback: ladder.feedback,
    repsInBlock: done,
    blockSize: size,
    repsInStage: ladder.repsInStage,
    repsInSession: book.session?.reps.length ?? 0,
    nextRepAnswered: book.mode === "practice" && isAnswered(ladder.feedback, ladder.block.length + 1),
    feltQuestion: book.feltQuestion,
    feltAnswerWanted: book.heldBack?.verdict.repId ?? null,
    feltAnswerCheckpoint: book.heldBack?.checkpoint ?? null,
    retentionOffer: book.offer && { kind: book.offer, sentence: offerSentence(book.offer) },
    verdict: book.verdict,
    pattern: namePattern(book.baselines[book.station.club]?.reps ?? [], layout),
    advice: [...adviseOn(book, practice)],
    lastChange,
  };
}

function progress(book: GolferBook, ladder: Ladder): readonly [done: number, size: number] {
  switch (book.mode) {
    case "baseline":
      return [book.baselines[book.station.club]?.reps.length ?? 0, practiceSettings.baseline.reps];
    case "retention-test":
      return [book.test?.reps.length ?? 0, practiceSettings.retention.reps];
    case "practice":
      return [ladder.block.length, practiceSettings.block.reps];
  }
}

function viewAim(target: Target, book: GolferBook, ladder: Ladder): Aim {
  const layout = layoutOf(book);
  const felt = feltPlace(target);
  const last = ladder.blocks.at(-1)?.places.find(({ checkpoint }) => checkpoint === target.checkpoint);
  const { checkpoint, wanted, wantedPlace, baseline, change, cue } = target;
  return {
    checkpoint,
    wanted,
    felt: cue.exaggerateBy === 0 ? wanted : feltStretch(felt, layout),
    wantedBand: bandAt(wantedPlace, layout),
    feltBand: bandAt(felt, layout),
    exaggerateBy: cue.exaggerateBy,
    cap: change === null ? cue.exaggerateBy : capOf(change),
    baseline,
    carryOver: last?.carryOver ?? null,
    reason: cue.reason,
  };
}

function viewProposals({ proposals }: Ladder): Proposal[] {
  return placeCheckpointIds.flatMap((checkpoint) => {
    const proposal = proposals[checkpoint];
    if (!proposal) return [];
    const { exaggerateBy, needsYes, reason } = proposal;
    return [{ checkpoint, exaggerateBy, pastCap: needsYes, reason }];
  });
}
