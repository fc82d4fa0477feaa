import { oneDecimal } from "../judged.ts";
import { bandSubjectAt, bandSubjects } from "@overcue/shared-geometry/checkpoints";
import type { SessionSpeed } from "../../scenes/session/practice-session.ts";
import { datedIds, golfDbShare, placeFigures, repFigures, timeFigures } from "./figures.ts";
import type { JudgedBand } from "./judge-bands.ts";
import type { JudgedLive } from "./judge-live.ts";
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

/** What was told while it happened, before the reps were over. */
export function liveLine(live: readonly JudgedLive[]): string {
  const passed = live.flatMap(({ late, sdMs }) => (late === null ? [] : [{ late, sdMs }]));
  const covered = passed.filter(({ late, sdMs }) => Math.abs(late) <= 1.96 * sdMs).length;
  const place = placeFigures(live);
  const [coveredShare, p50, p95, placeCovered, decided, right, wrong] = [
    (100 * covered) / passed.length,
    ...[place.p50, place.p95, place.covered, place.decided, place.right, place.wrong],
  ].map(oneDecimal);
  return [
    `Told as it happens, no goal set: ${live.length} checkpoints, ${live.length - passed.length} of them where the club passed none; of the instants ${coveredShare} % within their 95 % interval. Places p50 ${p50} cm, p95 ${p95} cm, ${placeCovered} % within`,
    `theirs; ${decided} % of ${place.count} bands decided, ${right} % of these right, ${wrong} % of all decided and wrong.`,
  ].join("\n");
}

/** What was claimed of single pictures, most of them of a moving club. */
export function bandLine(bands: readonly JudgedBand[]): string {
  const claimed = bandSubjects.map((subject) => {
    const here = bands.filter((one) => one.subject === subject);
    const wrong = here.filter(({ right }) => !right).length;
    return `${here.length} of the ${subject.replace("-", " ")}, ${oneDecimal((100 * wrong) / here.length)} % of them wrong`;
  });
  return `Bands claimed from picture to picture, no goal set: ${claimed.join("; ")}.`;
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
