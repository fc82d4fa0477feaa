import { atLeast, between, type Judged } from "../judged.ts";
import { repFigures, timeFigures } from "../clock/figures.ts";
import type { JudgedSession } from "../clock/judge-session.ts";

/** Goals of our own: the issues ask nothing of a clip without a station but to be right on the real one. */
export function judgeGoals(sessions: readonly JudgedSession[]): Judged[] {
  const { recall, precision } = repFigures(sessions);
  const { covered } = timeFigures(
    sessions.flatMap(({ checkpoints }) => checkpoints).filter(({ checkpoint }) => checkpoint !== "address"),
  );
  return [
    atLeast("reps found", recall, 95, "%"),
    atLeast("of the reported reps, real", precision, 95, "%"),
    between("instants: 95 % interval covers", covered, 88, 98),
  ];
}
