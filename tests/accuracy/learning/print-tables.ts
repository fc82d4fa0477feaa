import { arms } from "./arms.ts";
import type { ArmFigures } from "./compare-arms.ts";
import type { Goal } from "./goals.ts";

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

/** One row an arm, Markdown. */
export function armTable(figures: readonly ArmFigures[]): string {
  const head =
    "| arm | reach 80 % in 12 blocks | median blocks | over 150 % (book) | over 150 % (truth) | fewer blocks than fixed gain 2 | the same, where both reach it | next day without feedback, median |\n|---|---|---|---|---|---|---|---|";
  const rows = figures.map((row) =>
    [
      arms[row.arm].name,
      percent(row.reached),
      Number.isFinite(row.medianBlocks) ? String(row.medianBlocks) : "over 12",
      percent(row.overshot),
      percent(row.trulyOvershot),
      row.arm === "fixedGain" ? "" : percent(row.fasterThanFixedGain),
      row.arm === "fixedGain" || row.fasterAmongBoth === null ? "" : percent(row.fasterAmongBoth),
      percent(row.nextDay),
    ].join(" | "),
  );
  return [head, ...rows.map((row) => `| ${row} |`)].join("\n");
}

/** One row a goal, Markdown. */
export function goalTable(goals: readonly Goal[]): string {
  const rows = goals.map(
    ({ what, goal, figure, met }) => `| ${what} | ${goal} | ${percent(figure)} | ${met ? "met" : "missed"} |`,
  );
  return ["| adaptive cue, a person always says yes | goal | figure | |\n|---|---|---|---|", ...rows].join("\n");
}

/** The last line of the run. */
export function summaryLine(golfers: number, goals: readonly Goal[]): string {
  const missed = goals.filter(({ met }) => !met).map(({ what }) => what);
  const verdict = missed.length === 0 ? "all goals met" : `missed: ${missed.join("; ")}`;
  return `simulate:learning, ${golfers} golfers an arm: ${verdict}`;
}
