import type { GolferBook, Practice } from "../journal/state.ts";
import { drillOf, ladderOf, targetsOf } from "../journal/targets.ts";
import { practiceSettings } from "../settings.ts";
import { expectation, stages } from "../stage/stages.ts";
import { longLabel } from "./words.ts";
import { offerSentence } from "./offer-sentence.ts";

/** One sentence each, most urgent first, for the session view and the coach. */
export function adviseOn(book: GolferBook, practice: Practice): readonly string[] {
  const ladder = ladderOf(book);
  return [
    ...leftOut(book),
    ...(book.offer ? [offerSentence(book.offer)] : []),
    ...(drillOf(book, practice).checkpoints.length === 0 ? ["Choose a checkpoint and a band for the free drill."] : []),
    ...aboutBaseline(book, practice),
    ...(ladder.lastJudgement === null ? [] : [ladder.lastJudgement]),
    `${stages[ladder.stage].how}${ladder.rodBack ? " Rod back on for this block." : ""}`,
    expectation.sentence,
    honesty,
  ];
}

/** What is known of the method itself. */
export const honesty =
  "Feeling the opposite, and more of it, is common practice; no controlled study of it was found. This book measures whether it works for you.";

function leftOut(book: GolferBook): readonly string[] {
  const reasons = (book.session?.reps ?? []).flatMap(({ leftOut: reason }) => (reason === null ? [] : [reason]));
  const kinds = [...new Set(reasons)];
  return kinds.map((kind) => {
    const count = reasons.filter((reason) => reason === kind).length;
    return `${count} ${count === 1 ? "rep is" : "reps are"} kept but not counted: ${kind}.`;
  });
}

function aboutBaseline(book: GolferBook, practice: Practice): readonly string[] {
  const baseline = book.baselines[book.station.club];
  const { reps: wanted, fewest } = practiceSettings.baseline;
  const made = baseline?.reps.length ?? 0;
  if (book.mode === "baseline" && !baseline?.finished)
    return [`Baseline: ${made} of ${wanted} reps, your own way and without any answer.`];
  const targets = targetsOf(book, practice);
  const missing = targets.filter((target) => !target.baseline).map(({ checkpoint }) => longLabel(checkpoint));
  return [
    ...(made > 0 && made < wanted
      ? [`The baseline rests on ${made} ${made === 1 ? "rep" : "reps"} instead of ${wanted}.`]
      : []),
    ...(missing.length > 0
      ? [
          `No baseline at ${missing.join(", ")}: fewer than ${fewest} reps were read there, so no carry-over is claimed.`,
        ]
      : []),
  ];
}
