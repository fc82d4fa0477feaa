import type { RowName } from "./rows.ts";
import type { Figures } from "./figures.ts";
import { goalsOf, isMet, type Goal } from "./goals.ts";
import type { Method } from "./judge-scene.ts";

/** One line of the table. */
export interface Line {
  readonly name: RowName;
  readonly method: Method;
  readonly figures: Figures;
}

const columns: readonly {
  readonly figure: keyof Figures;
  readonly title: string;
  readonly as: "share" | "degrees" | "ms" | "count";
}[] = [
  { figure: "frames", title: "pictures", as: "count" },
  { figure: "trackedShare", title: "tracked", as: "share" },
  { figure: "within1", title: "<= 1 deg", as: "share" },
  { figure: "within2", title: "<= 2 deg", as: "share" },
  { figure: "within3", title: "<= 3 deg", as: "share" },
  { figure: "within5", title: "<= 5 deg", as: "share" },
  { figure: "medianDegrees", title: "median", as: "degrees" },
  { figure: "coverage", title: "in 95 %", as: "share" },
  { figure: "acrossCoverage", title: "line in 95 %", as: "share" },
  { figure: "headCoverage", title: "head in 95 %", as: "share" },
  { figure: "falseLock", title: "false lock", as: "share" },
  { figure: "confidentWrong", title: "sure+wrong", as: "share" },
  { figure: "lost", title: "lost", as: "share" },
  { figure: "millisecondsEach", title: "ms", as: "ms" },
];

/** The table as Markdown: each figure with its goal beside it where the row has one, and whether it is met. */
export function tableOf(lines: readonly Line[]): string {
  const head = ["condition", "answer", ...columns.map(({ title }) => title)];
  const rows = lines.map((line) => [
    line.name,
    line.method,
    ...columns.map(({ figure, as }) => cell(line, figure, as)),
  ]);
  const widths = head.map((title, index) => Math.max(title.length, ...rows.map((row) => row[index]?.length ?? 0)));
  const show = (row: readonly string[]): string =>
    `| ${row.map((text, index) => text.padEnd(widths[index] ?? 0)).join(" | ")} |`;
  return [show(head), show(widths.map((width) => "-".repeat(width))), ...rows.map(show)].join("\n");
}

/** The goals that were missed, one sentence each. */
export function missedGoals(lines: readonly Line[]): readonly string[] {
  return lines.flatMap((line) =>
    goalsFor(line)
      .filter((goal) => !isMet(goal, line.figures))
      .map((goal) => {
        const column = columns.find(({ figure }) => figure === goal.figure);
        const value = showValue(line.figures[goal.figure], column?.as ?? "share");
        return `${line.name}, ${line.method}: ${column?.title ?? goal.figure} ${value}, goal ${showGoal(goal, column?.as ?? "share")}`;
      }),
  );
}

export const countGoals = (lines: readonly Line[]): number =>
  lines.reduce((sum, line) => sum + goalsFor(line).length, 0);

/** Goals are the tracker's: OpenCV stands beside it for comparison only. */
const goalsFor = (line: Line): readonly Goal[] => (line.method === "HoughLinesP" ? [] : goalsOf(line.name));

function cell(line: Line, figure: keyof Figures, as: (typeof columns)[number]["as"]): string {
  const value = showValue(line.figures[figure], as);
  const goal = goalsFor(line).find((each) => each.figure === figure);
  return goal ? `${value} (${isMet(goal, line.figures) ? "" : "missed: "}${showGoal(goal, as)})` : value;
}

function showGoal(goal: Goal, as: (typeof columns)[number]["as"]): string {
  if (goal.atLeast !== undefined && goal.atMost !== undefined) {
    return `${showValue(goal.atLeast, as)}-${showValue(goal.atMost, as)}`;
  }
  return goal.atLeast === undefined ? `<= ${showValue(goal.atMost ?? null, as)}` : `>= ${showValue(goal.atLeast, as)}`;
}

function showValue(value: number | null, as: (typeof columns)[number]["as"]): string {
  if (value === null) return "-";
  switch (as) {
    case "share":
      return `${(100 * value).toFixed(1)} %`;
    case "degrees":
      return value.toFixed(2);
    case "ms":
      return value.toFixed(1);
    case "count":
      return value.toFixed(0);
  }
}
