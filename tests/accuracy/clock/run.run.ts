import { parseArgs } from "node:util";
import { goalTable, type Judged } from "../judged.ts";
import { onWorkers } from "../on-workers.ts";
import { quantile } from "../quantile.ts";
import { writeSection } from "../write-section.ts";
import { judgeGoals } from "./goals.ts";
import type { MeasuredSession } from "./measure-clock.ts";
import type { Answer, Task } from "./session-worker.ts";
import { bandLine, checkpointTable, liveLine, repLines } from "./tables.ts";

/**
 * npm run accuracy:clock [-- --simulated N] [--filmed N] [--late MS] [--workers N]: how well reps and their checkpoints are found, and the club's places there.
 * Prints each goal beside its figure; exit code 1 where one is missed. The section in RESULTS.md says with what counts it was made. With --late the poses of the filmed sessions are there so many
 * milliseconds after their pictures, as a phone's are; such a run leaves RESULTS.md as it is.
 */
const usual = { simulated: "24", filmed: "14" };
const { values } = parseArgs({
  options: {
    simulated: { type: "string", default: usual.simulated },
    filmed: { type: "string", default: usual.filmed },
    late: { type: "string", default: "0" },
    workers: { type: "string", default: "2" },
  },
});
/** Nothing was tuned with these sessions: earlier tuning saw those from 0 on and from 300 and 480 on. */
const firstKept = 2400;
const list = (how: Task["how"], count: string): Task[] =>
  Array.from({ length: Number(count) }, (_, index) => ({
    how,
    index: firstKept + index,
    posesLate: Number(values.late),
  }));
const tasks = [...list("filmed", values.filmed), ...list("simulated", values.simulated)];
const answers = await onWorkers(
  new URL("session-worker.ts", import.meta.url),
  tasks,
  Number(values.workers),
  ({ how, index }: Answer, _, done) => {
    process.stderr.write(`\r${done}/${tasks.length} sessions, last ${how} ${index}        `);
  },
);
process.stderr.write("\n");

const sections: string[] = [];
const goals: Judged[] = [];

function tell(title: string, note: string, measured: readonly MeasuredSession[]): void {
  const sessions = measured.map(({ judged }) => judged);
  if (sessions.length === 0) return;
  const judged = judgeGoals(sessions);
  goals.push(...judged);
  sections.push(
    `### ${title}`,
    note,
    goalTable(judged).join("\n"),
    repLines(sessions),
    liveLine(measured.flatMap(({ live }) => live)),
    bandLine(measured.flatMap(({ bands }) => bands)),
    "By checkpoint; times are reported less true, places across the ball line at the reported instant less those at the true one:",
    checkpointTable(sessions),
  );
}

const filmed = answers.filter((answer) => answer.how === "filmed");
const failed = answers.filter((answer) => answer.how === "failed");
const lens = filmed.flatMap(({ lensOff }) => (lensOff === null ? [] : [100 * lensOff]));
tell(
  "Filmed: the demo golfer, every stage real",
  `${filmed.length} sessions, ${filmed.reduce((sum, { frames }) => sum + frames, 0)} pictures of 720x1280 (30 a second slow, 60 else), four or five reps one after the other without distractions, slow ones in 3 s; the real pose model asked 15 times a second, its answers ${values.late} ms late, the real tracker as it looks live, each rep gone over when it has ended, as it goes into the book; the camera from the sticks found in
ten pictures of the empty place (its lens p50 ${quantile(lens, 0.5).toFixed(0)} cm, at most ${quantile(lens, 1).toFixed(0)} cm from the virtual one; in ${filmed.length - lens.length} sessions they were not found, and the virtual camera stands in for marks drawn by hand). ${failed.length} sessions failed${failed.map(({ index, why }) => ` (${index}: ${why})`).join("")}.`,
  filmed,
);
const simulated = answers.filter((answer) => answer.how === "simulated");
const rates = [
  ...new Set(simulated.flatMap(({ judged }) => judged.checkpoints.map(({ framesPerSecond }) => framesPerSecond))),
].sort((a, b) => a - b);
tell(
  "Simulated: pose and tracker answer as they err on rendered scenes",
  `${rates.join(", ")} pictures a second, both hands, distractions between; the camera is known. The errors that are simulated are in \`tests/scenes/session/sight-errors.ts\` and \`tests/scenes/pose/pose-errors.ts\`.`,
  simulated,
);

const met = goals.filter((goal) => goal.met).length;
const summary = `accuracy:clock: ${met} of ${goals.length} goals met, ${failed.length} sessions failed.`;
const body = sections.join("\n\n");
console.log(`${body}\n\n${summary}`);
const isUsual = values.simulated === usual.simulated && values.filmed === usual.filmed;
const asked = isUsual ? "" : ` -- --simulated ${values.simulated} --filmed ${values.filmed}`;
if (values.late === "0")
  writeSection(
    "clock",
    "Reps and their checkpoints",
    `npm run accuracy:clock${asked}`,
    new Date(),
    `${body}\n\n${summary}`,
  );
process.exitCode = met === goals.length && failed.length === 0 ? 0 : 1;
