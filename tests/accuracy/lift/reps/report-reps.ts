import { bandSubjectAt, checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { atMost, between, goalTable, type Judged } from "../../judged.ts";
import { quantile } from "../../quantile.ts";
import type { RepMeasure, RepReadingMeasure } from "./measure-rep.ts";
import { repSpeeds } from "./random-rep.ts";

type Side = "live" | "finished";

const armLevel: readonly CheckpointId[] = ["arm-level-back", "arm-level-down"];

interface Figures {
  readonly readings: number;
  /** Centimetres, of what was told. */
  readonly p50: number;
  readonly p95: number;
  /** Percent of what was told that lies inside its 95 % interval. */
  readonly covers: number;
  /** Percent of all readings. */
  readonly leanWrong: number;
  readonly wrongBand: number;
  readonly unsure: number;
  readonly notTold: number;
  /** Percent of the decided ones. */
  readonly rightWhereDecided: number;
}

export function figuresOf(readings: readonly RepReadingMeasure[]): Figures {
  const told = readings.flatMap(({ error, sd }) => (error === null || sd === null ? [] : [{ error, sd }]));
  const decided = readings.filter((reading) => reading.decided);
  const wrong = decided.filter(({ right }) => !right).length;
  const errors = told.map(({ error }) => 100 * Math.abs(error));
  const share = (count: number, of = readings.length): number => (100 * count) / of;
  return {
    readings: readings.length,
    p50: quantile(errors, 0.5),
    p95: quantile(errors, 0.95),
    covers: share(told.filter(({ error, sd }) => Math.abs(error) <= 1.96 * sd).length, told.length),
    leanWrong: share(readings.filter(({ leanWrong }) => leanWrong).length),
    wrongBand: share(wrong),
    unsure: share(told.length - decided.length),
    notTold: share(readings.length - told.length),
    rightWhereDecided: 100 - share(wrong, decided.length),
  };
}

const readingsOf = (reps: readonly RepMeasure[], side: Side): RepReadingMeasure[] => reps.flatMap((rep) => rep[side]);

/** Share of the pictures with a plain lean that are answered with the other sign, percent of those answered. */
function wrongLeans(reps: readonly RepMeasure[], side: Side): number {
  const sum = (of: (rep: RepMeasure) => number): number => reps.reduce((total, rep) => total + of(rep), 0);
  const wrong = sum((rep) => (side === "live" ? rep.liveWrong : rep.finishedWrong));
  const none = sum((rep) => (side === "live" ? rep.liveNone : rep.finishedNone));
  return (100 * wrong) / (sum(({ leaning }) => leaning) - none);
}

/** Goals of the finished rep, with figures. */
export function judgeReps(reps: readonly RepMeasure[]): Judged[] {
  const all = readingsOf(reps, "finished");
  const butt = figuresOf(all.filter(({ checkpoint }) => armLevel.includes(checkpoint)));
  const head = figuresOf(all.filter(({ checkpoint }) => checkpoint === "shaft-level-back"));
  const every = figuresOf(all);
  const most = (name: string, value: number, goal: number, unit: Judged["unit"]): Judged =>
    atMost(`finished rep: ${name}`, value, goal, unit);
  return [
    most("butt point error p50", butt.p50, 2.5, "cm"),
    most("butt point error p95", butt.p95, 8, "cm"),
    most("head point at shaft level back p50", head.p50, 3, "cm"),
    most("head point at shaft level back p95", head.p95, 9, "cm"),
    between("finished rep: 95 % interval covers", every.covers, 92, 98),
    most("band decided and wrong, of all readings", every.wrongBand, 1, "%"),
  ];
}

/** The figures as Markdown. */
export function repsTable(reps: readonly RepMeasure[], asked: number, judged: readonly Judged[]): string {
  return [
    `${reps.length} reps of as many invented golfers (${asked - reps.length} stations refused), with stations and cameras as above, through the stages of the pipeline. All kinds of`,
    "rep, slow to full speed, 30 and 60 pictures a second, both hands; the club up to 35 degrees off the usual plane at shaft level, each way, going back and coming",
    "down independently; butt points from 35 cm beyond the ball line to 50 cm behind it. Noise: 0.5 degrees and 1 cm on the shaft (half of the variance lasts 70 ms), 5 cm on depth (70 % of the",
    "variance lasts through the rep), 3 % of pictures lost one by one, a gap of 50-150 ms every 2 s, the head end unseen for 0.1-0.6 s every 2.5 s, short shafts mostly",
    "lost, 1 % of pictures on a wrong line that is stated like any other. A shaft has the wrong lean where it plainly leans (11 degrees) and is answered",
    "leaning the other way. Readings are judged at the picture after the true instant.",
    "",
    ...goalTable(judged),
    "",
    ...(["finished", "live"] as const).flatMap((side) => [
      side === "finished"
        ? `Finished, gone over again (wrong lean in ${wrongLeans(reps, side).toFixed(1)} % of all pictures of the reps, the way back to the ball included):`
        : `Live, by the pictures so far (wrong lean in ${wrongLeans(reps, side).toFixed(1)} %; at full speed nothing is shown live):`,
      "",
      "| | readings | p50 cm | p95 cm | 95 % covers % | wrong lean % | band decided and wrong % | right where decided % | unsure % | not told % |",
      "| --- | --: | --: | --: | --: | --: | --: | --: | --: | --: |",
      ...rowsOf(reps, side),
      "",
    ]),
  ].join("\n");
}

function rowsOf(reps: readonly RepMeasure[], side: Side): string[] {
  const all = readingsOf(reps, side);
  const at = checkpointIds.filter((id) => bandSubjectAt[id] !== null);
  return [
    ...at.map((id) =>
      row(
        id,
        all.filter(({ checkpoint }) => checkpoint === id),
      ),
    ),
    ...repSpeeds.map((speed) =>
      row(
        `${speed} speed`,
        readingsOf(
          reps.filter(({ rep }) => rep.speed === speed),
          side,
        ),
      ),
    ),
    row("all", all),
  ];
}

function row(name: string, readings: readonly RepReadingMeasure[]): string {
  const f = figuresOf(readings);
  const cells = [f.p50, f.p95, f.covers, f.leanWrong, f.wrongBand, f.rightWhereDecided, f.unsure, f.notTold];
  return `| ${name} | ${f.readings} | ${cells.map((value) => value.toFixed(1)).join(" | ")} |`;
}
