import type { Verdict } from "@overcue/shared-geometry/wire/practice";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import { placesOf, type Place } from "../figures/place.ts";
import { practiceSettings } from "../settings.ts";
import { feedbackPlans, isAnswered } from "../speak/feedback-plan.ts";
import { makeVerdict } from "../speak/make-verdict.ts";
import type { RelayTime } from "../units.ts";
import { closeBlock } from "./close-block.ts";
import { closeTest } from "./close-test.ts";
import type { RepRecord } from "./events.ts";
import type { CountedRep, GolferBook, PerCheckpoint, Practice, Session } from "./state.ts";
import { drillOf, ladderOf, layoutOf, summariseCheckpoint, targetsOf, withLadder } from "./targets.ts";

/** A rep comes in: listed in the session, counted where it may be, and answered where an answer is due. */
export function takeRep(book: GolferBook, practice: Practice, rep: RepRecord, at: RelayTime): GolferBook {
  const places = placesOf(rep);
  const leftOut = whyLeftOut(book, practice, rep, places);
  const session: Session = book.session ?? { id: "before-the-first", startedAt: at, reps: [] };
  const listed: GolferBook = {
    ...book,
    session: { ...session, reps: [...session.reps, { repId: rep.id, at, places, leftOut }] },
    repsInAll: book.repsInAll + 1,
    verdict: null,
    heldBack: null,
  };
  if (leftOut !== null) return { ...listed, verdict: roughVerdict(listed, practice, rep, places) };
  const shown: PerCheckpoint<Metres> = Object.fromEntries(
    rep.shown.map(({ checkpoint, felt }) => [checkpoint, metres(felt)]),
  );
  const counted: CountedRep = { repId: rep.id, places, shown };
  switch (book.mode) {
    case "baseline":
      return addToBaseline(listed, counted);
    case "retention-test":
      return addToTest(listed, practice, counted, at);
    case "practice":
      return addToBlock(listed, practice, counted, at);
  }
}

/** Why a rep is kept but moves no figure; null where it counts. */
function whyLeftOut(book: GolferBook, practice: Practice, rep: RepRecord, places: readonly Place[]): string | null {
  if (practice.paused) return "made while paused";
  if (rep.calibration === "uncalibrated") return "camera not calibrated";
  if (rep.calibration === "suspect") return "camera or sticks moved";
  if (rep.handed !== book.golfer.handed) return `read for a ${rep.handed}-handed golfer`;
  const needed = drillOf(book, practice).checkpoints.map(({ checkpoint }) => checkpoint);
  const useful = book.mode === "baseline" ? places : places.filter(({ checkpoint }) => needed.includes(checkpoint));
  return useful.length === 0 ? "nothing could be read at this drill's checkpoints" : null;
}

function addToBaseline(book: GolferBook, rep: CountedRep): GolferBook {
  const { club } = book.station;
  const reps = [...(book.baselines[club]?.reps ?? []), rep];
  const finished = reps.length >= practiceSettings.baseline.reps;
  return {
    ...book,
    baselines: { ...book.baselines, [club]: { reps, finished } },
    mode: finished ? "practice" : "baseline",
  };
}

function addToTest(book: GolferBook, practice: Practice, rep: CountedRep, at: RelayTime): GolferBook {
  const test = book.test ?? { kind: "next-day" as const, reps: [] };
  const reps = [...test.reps, rep];
  const next = { ...book, test: { ...test, reps } };
  return reps.length >= practiceSettings.retention.reps ? closeTest(next, practice, at) : next;
}

function addToBlock(book: GolferBook, practice: Practice, rep: CountedRep, at: RelayTime): GolferBook {
  const ladder = ladderOf(book);
  const block = [...ladder.block, rep];
  const added = withLadder(
    { ...book, lastPracticeAt: at, offer: null },
    { ...ladder, block, repsInStage: ladder.repsInStage + 1 },
  );
  const full = block.length >= practiceSettings.block.reps;
  const next = full ? closeBlock(added, practice, at) : added;
  if (!isAnswered(ladder.feedback, block.length)) return next;
  const { summary } = feedbackPlans[ladder.feedback];
  const targets = targetsOf(next, practice);
  const verdict = makeVerdict({
    repId: rep.repId,
    places: summary
      ? medians(
          next,
          block,
          targets.map(({ checkpoint }) => checkpoint),
        )
      : rep.places,
    targets,
    layout: layoutOf(next),
    summary,
    before: "",
    after: full ? (ladderOf(next).lastJudgement ?? "") : "",
  });
  return answer(next, verdict, targets.find(({ exaggerates }) => exaggerates)?.checkpoint ?? null);
}

function medians(
  book: GolferBook,
  block: readonly CountedRep[],
  checkpoints: readonly PlaceCheckpoint[],
): readonly Place[] {
  return checkpoints.flatMap((checkpoint) => {
    const summary = summariseCheckpoint(block, checkpoint, layoutOf(book));
    return summary ? [{ checkpoint, y: summary.median, sd: summary.sd }] : [];
  });
}

/** The answer is shown, or held back until the golfer has said what it felt like. */
function answer(book: GolferBook, verdict: Verdict | null, asked: PlaceCheckpoint | null): GolferBook {
  const checkpoint = asked ?? verdict?.places[0]?.checkpoint ?? null;
  const place = verdict?.places.find((each) => each.checkpoint === checkpoint);
  if (!verdict || !book.feltQuestion || !place || verdict.kind === "summary") return { ...book, verdict };
  return { ...book, heldBack: { checkpoint: place.checkpoint as PlaceCheckpoint, verdict } };
}

/** A rep that does not count is answered all the same while practising, with the reason first. */
function roughVerdict(book: GolferBook, practice: Practice, rep: RepRecord, places: readonly Place[]): Verdict | null {
  const ladder = ladderOf(book);
  if (practice.paused || book.mode !== "practice" || !isAnswered(ladder.feedback, ladder.block.length + 1)) return null;
  return makeVerdict({
    repId: rep.id,
    places,
    targets: targetsOf(book, practice),
    layout: layoutOf(book),
    summary: false,
    before: `Not counted: ${rep.calibration === "station" || rep.calibration === "demo" ? `read for a ${rep.handed}-handed golfer` : rep.calibration}.`,
    after: "",
  });
}
