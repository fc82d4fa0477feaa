import { atLeast, atMost, between, type Judged } from "../judged.ts";
import { isSlow } from "../../scenes/session/practice-session.ts";
import { placeFigures, repFigures, timeFigures } from "./figures.ts";
import type { JudgedSession } from "./judge-session.ts";

/** Every goal with its figure. */
export function judgeGoals(sessions: readonly JudgedSession[]): Judged[] {
  const { recall, precision } = repFigures(sessions);
  const all = sessions.flatMap(({ checkpoints }) => checkpoints).filter(({ checkpoint }) => checkpoint !== "address");
  const slow = all.filter(({ speed }) => isSlow(speed));
  const rod = all.filter(({ speed }) => speed === "slow+rod");
  const full = all.filter(({ speed }) => speed === "full");
  const { covered } = timeFigures(all);
  const places = placeFigures(all);
  return [
    atLeast("reps found", recall, 99, "%"),
    atLeast("of the reported reps, real", precision, 99, "%"),
    atLeast("slow: instants within half a frame at 60 a second", timeFigures(slow).within, 95, "%"),
    atLeast("full speed: instants within one frame", timeFigures(full).within, 95, "%"),
    between("instants: 95 % interval covers", covered, 92, 98),
    atMost("slow with rod: butt and head point p50", placeFigures(rod).p50, 3, "cm"),
    atMost("slow with rod: butt and head point p95", placeFigures(rod).p95, 9, "cm"),
    atMost(
      "full speed, 60 a second: butt and head point p95",
      placeFigures(full.filter(({ framesPerSecond }) => framesPerSecond === 60)).p95,
      14,
      "cm",
    ),
    atLeast("band right where decided", places.right, 95, "%"),
    atMost("decided and wrong, of all", places.wrong, 1, "%"),
  ];
}
