import { metres, type Metres } from "@overcue/shared-geometry/units";
import { arrivesAtFirst, updateArrives } from "../cue/arrives.ts";
import { proposeCue } from "../cue/propose-cue.ts";
import { carryOverOf, type CarryOver } from "../figures/carry-over.ts";
import type { PlaceSummary } from "../figures/summarise-places.ts";
import { judgeBlock, type Judgement } from "../stage/judge-block.ts";
import { stages, usualStageRules } from "../stage/stages.ts";
import type { RelayTime } from "../units.ts";
import { inPercent, shortLabel } from "../view/words.ts";
import type { BlockPlace, CountedRep, GolferBook, Ladder, Practice } from "./state.ts";
import { feltPlace, ladderOf, layoutOf, summariseCheckpoint, targetsOf, withLadder, type Target } from "./targets.ts";
import { without } from "./without.ts";

/** A target of the block just finished, with what the block did there. */
interface Column {
  readonly target: Target;
  readonly summary: PlaceSummary;
  /** Where the cue really stood, the mean over the block's reps. */
  readonly felt: Metres;
  readonly carryOver: CarryOver | null;
}

/** Closes the block: figures, judgement of the stage, what was learnt of this golfer's carry-over, and the next cue or a proposal of it. */
export function closeBlock(book: GolferBook, practice: Practice, at: RelayTime): GolferBook {
  const ladder = ladderOf(book);
  const targets = targetsOf(book, practice);
  const columns = targets.flatMap((target): Column[] => {
    const summary = summariseCheckpoint(ladder.block, target.checkpoint, layoutOf(book));
    if (!summary) return [];
    const place = { y: summary.median, sd: summary.sd };
    const carryOver =
      target.baseline && target.change !== null ? carryOverOf(place, target.baseline, target.change) : null;
    return [{ target, summary, felt: meanFelt(ladder.block, target), carryOver }];
  });
  const judgement = judge(ladder, targets, columns);
  const moved = moveCues(book, ladder, columns, judgement === "fall-back");
  return withLadder(book, {
    ...climb(moved, judgement),
    block: [],
    blocks: [
      ...ladder.blocks,
      {
        at,
        stage: ladder.stage,
        reps: ladder.block.map(({ repId }) => repId),
        passed: judgement === "pass",
        places: columns.map(toBlockPlace),
      },
    ],
    lastJudgement: sentenceOf(ladder, moved, judgement, columns),
  });
}

function meanFelt(block: readonly CountedRep[], target: Target): Metres {
  const shown = block.flatMap(({ shown: places }) => places[target.checkpoint] ?? []);
  if (shown.length === 0) return feltPlace(target);
  return metres(shown.reduce((sum, y) => sum + y, 0) / shown.length);
}

function toBlockPlace({ target, summary, felt, carryOver }: Column): BlockPlace {
  return {
    checkpoint: target.checkpoint,
    summary,
    exaggerateBy: metres(felt - target.wantedPlace),
    carryOver,
  };
}

function judge(ladder: Ladder, targets: readonly Target[], columns: readonly Column[]): Judgement {
  const cued = targets.filter(({ exaggerates }) => exaggerates);
  return judgeBlock(
    cued.map((target) => ({
      reps: ladder.block.map((rep) => repCarryOver(rep, target)),
      block: columns.find((column) => column.target === target)?.carryOver ?? null,
    })),
    usualStageRules,
  );
}

function repCarryOver(rep: CountedRep, { checkpoint, baseline, change }: Target): CarryOver | null {
  const place = rep.places.find((each) => each.checkpoint === checkpoint);
  return place && baseline && change !== null ? carryOverOf(place, baseline, change) : null;
}

/** The adaptive cue moves by itself within the cap; past it, locked or by hand it only proposes. */
function moveCues(book: GolferBook, ladder: Ladder, columns: readonly Column[], fellBack: boolean): Ladder {
  const layout = layoutOf(book);
  const free = book.cueMode === "adaptive" && book.lockedBy === null;
  let { cues, arrives, proposals } = ladder;
  for (const { target, summary, felt, carryOver } of columns) {
    const { checkpoint, baseline, change, wantedPlace, cue, exaggerates } = target;
    if (!exaggerates || !baseline || change === null || carryOver === null) continue;
    const learnt = updateArrives(arrives[checkpoint] ?? arrivesAtFirst, {
      felt: metres(felt - baseline.median),
      reached: metres(summary.median - baseline.median),
      reachedSd: metres(Math.hypot(summary.sd, baseline.sd)),
    });
    arrives = { ...arrives, [checkpoint]: learnt };
    const proposal = proposeCue({
      change,
      wantedPlace,
      exaggerateBy: cue.exaggerateBy,
      arrives: learnt,
      carryOver,
      layout,
      fellBack,
    });
    if (free && !proposal.needsYes) {
      cues = {
        ...cues,
        [checkpoint]: { exaggerateBy: proposal.exaggerateBy, setBy: "adaptive", reason: proposal.reason },
      };
      proposals = without(proposals, checkpoint);
    } else if (proposal.exaggerateBy !== cue.exaggerateBy) {
      proposals = { ...proposals, [checkpoint]: proposal };
    }
  }
  return { ...ladder, cues, arrives, proposals };
}

function climb(ladder: Ladder, judgement: Judgement): Ladder {
  const stage = stages[ladder.stage];
  if (judgement === "stay") return ladder;
  if (judgement === "fall-back") {
    const back = stage.back ?? stage.id;
    const changed = back !== stage.id;
    return {
      ...ladder,
      stage: back,
      rodBack: changed && !stages[back].rod,
      feedback: changed ? stages[back].feedback : ladder.feedback,
      repsInStage: changed ? 0 : ladder.repsInStage,
    };
  }
  if (ladder.rodBack) return { ...ladder, rodBack: false, repsInStage: 0 };
  if (stage.next === null) return ladder;
  return { ...ladder, stage: stage.next, feedback: stages[stage.next].feedback, repsInStage: 0 };
}

function sentenceOf(before: Ladder, after: Ladder, judgement: Judgement, columns: readonly Column[]): string {
  const reached = columns.flatMap(({ target, carryOver }) =>
    target.exaggerates && carryOver ? [`${shortLabel(target.checkpoint)} ${inPercent(carryOver.value)}`] : [],
  );
  const figures = reached.length > 0 ? ` (${reached.join(", ")})` : "";
  const stage = stages[before.stage];
  switch (judgement) {
    case "pass":
      if (before.rodBack) return `Block passed${figures}: the rod comes off again.`;
      return stage.next
        ? `Stage passed${figures}: on to the next. ${stages[stage.next].how}`
        : `Block passed${figures}.`;
    case "stay":
      return `Stay at this stage${figures}.`;
    case "fall-back": {
      const cue = cueInWords(before, after);
      return stage.back
        ? `Back one stage, rod on, ${cue}${figures}. ${stages[stage.back].how}`
        : `Same stage, ${cue}${figures}.`;
    }
  }
}

function cueInWords(before: Ladder, after: Ladder): string {
  if (after.cues !== before.cues) return "cue up one step";
  return Object.keys(after.proposals).length > 0 ? "a farther cue waits for your yes" : "the cue stays where it is";
}
