import { oneDecimal } from "../judged.ts";
import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import type { SessionSpeed } from "../../scenes/session/practice-session.ts";
import { datedIds, golfDbShare, placeFigures, repFigures, timeFigures } from "./figures.ts";
import type { JudgedSession } from "./judge-session.ts";

const speeds: readonly SessionSpeed[] = ["slow+rod", "slow", "flow", "full"];

/** Instants (milliseconds) and places (centimetres across the ball line) by speed and checkpoint. */
export function checkpointTable(sessions: readonly JudgedSession[]): string {
  const all = sessions.flatMap(({ checkpoints }) => checkpoints);
  const rows = speeds.flatMap((speed) =>
    datedIds.flatMap((id) => {
      const here = all.filter((seen) => seen.speed === speed && seen.checkpoint === id);
      if (here.length === 0) return [];
      const leftOut = sessions.flatMap((session) => session.leftOut);
      const missing = leftOut.filter((seen) => seen.speed === speed && seen.checkpoint === id).length;
      const time = timeFigures(here);
      const place = bandSubjectAt[id] === null ? null : placeFigures(here);
      const cells = [time.bias, time.p50, time.p95, time.within, time.covered].map(oneDecimal);
      const ground =
        place === null
          ? Array<string>(6).fill("")
          : [place.p50, place.p95, place.covered, place.told, place.decided, place.wrong].map(oneDecimal);
      return [`| ${[speed, id, `${time.count} (${missing})`, ...cells, ...ground].join(" | ")} |`];
    }),
  );
  return [
    "| speed | checkpoint | dated (left out) | bias ms | p50 ms | p95 ms | within asked % | covered % | place p50 cm | p95 cm | covered % | told % | decided % | decided and wrong % |",
    "| --- | --- | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |",
    ...rows,
  ].join("\n");
}

/** How the reps' kinds came out, and which were not found. */
export function repLines(sessions: readonly JudgedSession[]): string {
  const { reps } = repFigures(sessions);
  const told = countOf(sessions.flatMap(({ kinds }) => kinds.map(({ truth, told }) => `${truth} as ${told}`)));
  const missed = countOf(sessions.flatMap((session) => session.missed.map(({ speed, kind }) => `${speed} ${kind}`)));
  const invented = sessions.reduce((sum, session) => sum + session.invented, 0);
  const { ofFive, ofSix } = golfDbShare(sessions);
  return [
    `${reps} reps. Kinds: ${told}. Not found: ${missed === "" ? "none" : missed}. Reported where there was none: ${invented}.`,
    "",
    `Within the GolfDB benchmark's tolerance: ${oneDecimal(ofFive)} % of the five of its middle six events that are checkpoints here (${oneDecimal(ofSix)} % with mid-follow-through, which`,
    "is none, as missed). SwingNet on GolfDB's own videos: 91.8 % of the middle six. Another test set, and a simulated one: no comparison of the two.",
  ].join("\n");
}

function countOf(names: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].map(([name, count]) => `${count} ${name}`).join(", ");
}
