import { atLeast, atMost, between, goalTable, type Judged } from "../judged.ts";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { LiftMeasure } from "./measure-lift.ts";
import type { BandMeasure } from "./measure-scene.ts";
import { quantile } from "../quantile.ts";

const armLevel: readonly CheckpointId[] = ["arm-level-back", "arm-level-down"];

/** Share of errors inside the stated 95 % interval. */
const coverage = (inSds: readonly number[]): number =>
  (100 * inSds.filter((z) => Math.abs(z) <= 1.96).length) / inSds.length;

const bandsAt = (measure: LiftMeasure, checkpoints: readonly CheckpointId[]): BandMeasure[] =>
  checkpoints.flatMap((checkpoint) => [...(measure.bands.get(checkpoint) ?? [])]);

function bandFigures(bands: readonly BandMeasure[]) {
  const decided = bands.filter(({ decision }) => decision.decided);
  const clear = bands.filter(({ toBoundary }) => toBoundary > 0.05);
  return {
    right: (100 * decided.filter(({ right }) => right).length) / decided.length,
    unsure: (100 * clear.filter(({ decision }) => !decision.decided).length) / clear.length,
    p50:
      100 *
      quantile(
        bands.map(({ error }) => error),
        0.5,
      ),
    p95:
      100 *
      quantile(
        bands.map(({ error }) => error),
        0.95,
      ),
    drawnP50:
      100 *
      quantile(
        bands.map(({ drawnError }) => drawnError),
        0.5,
      ),
    drawnP95:
      100 *
      quantile(
        bands.map(({ drawnError }) => drawnError),
        0.95,
      ),
    drawnRight: (100 * bands.filter(({ drawnRight }) => drawnRight).length) / bands.length,
  };
}

/** Every goal with its figure. */
export function judgeLift(measure: LiftMeasure): Judged[] {
  const butt = bandFigures(bandsAt(measure, armLevel));
  const head = bandFigures(bandsAt(measure, ["shaft-level-back"]));
  const all = bandFigures([...measure.bands.values()].flat());
  return [
    atMost("butt point error p50", butt.p50, 2, "cm"),
    atMost("butt point error p95", butt.p95, 6.5, "cm"),
    atMost("head point at shaft level back p50", head.p50, 3, "cm"),
    atMost("head point at shaft level back p95", head.p95, 9, "cm"),
    between("butt point: 95 % interval covers", coverage(measure.inSds.get("buttPoint") ?? []), 93, 97),
    between("head point: 95 % interval covers", coverage(measure.inSds.get("headPoint") ?? []), 93, 97),
    atLeast("band right where decided", all.right, 97, "%"),
    atMost("unsure, truth over 5 cm from a boundary", all.unsure, 10, "%"),
  ];
}

/** The figures as Markdown. */
export function tableOf(stated: LiftMeasure, byHand: LiftMeasure, judged: readonly Judged[]): string {
  const lines = [
    `${stated.scenes} random scenes, ${stated.solved} solved (${refusalsOf(stated)}). Camera 2.5-5 m behind, 0.6-1.4 m high, within 0.5 m of the hand line,`,
    "8 degrees of yaw, 4 of roll, focal length within 20 %; both hands, all checkpoints. Noise: 1 px on sticks, 0.5 degrees and 1 cm on the shaft",
    "(across, grip along and head along, each), 5 cm on depth, 5 mm on the club's length. The lean is told by the motion before, known to 10 degrees.",
    "",
    ...goalTable(judged),
    "",
    "By checkpoint, beside the line that people draw on a video (ball and toes known exactly in the picture, no lens or depth corrected):",
    "",
    "| checkpoint | p50 cm | p95 cm | band right % | unsure % | drawn line p50 cm | p95 cm | band right % |",
    "| --- | --: | --: | --: | --: | --: | --: | --: |",
    ...[...stated.bands].map(([checkpoint, bands]) => row(checkpoint, bands)),
    "",
    `The same with sticks laid by hand (5 mm across, 0.3 degrees of turn, along freely), ${byHand.scenes} scenes, ${byHand.solved} solved (${refusalsOf(byHand)}):`,
    "",
    "| checkpoint | p50 cm | p95 cm | band right % | unsure % | drawn line p50 cm | p95 cm | band right % |",
    "| --- | --: | --: | --: | --: | --: | --: | --: |",
    ...[...byHand.bands].map(([checkpoint, bands]) => row(checkpoint, bands)),
    "",
    `Other read-outs, 95 % interval covers: ${[...stated.inSds].map(([name, z]) => `${name} ${coverage(z).toFixed(1)} %`).join(", ")}.`,
    `Lens placed within: p50 ${(100 * quantile(stated.cameraErrors, 0.5)).toFixed(1)} cm, p95 ${(100 * quantile(stated.cameraErrors, 0.95)).toFixed(1)} cm (mostly along the line of sight, traded against focal length).`,
  ];
  return lines.join("\n");
}

function row(checkpoint: CheckpointId, bands: readonly BandMeasure[]): string {
  const f = bandFigures(bands);
  const cells = [f.p50, f.p95, f.right, f.unsure, f.drawnP50, f.drawnP95, f.drawnRight].map((value) =>
    value.toFixed(1),
  );
  return `| ${checkpoint} | ${cells.join(" | ")} |`;
}

const refusalsOf = ({ refusals }: LiftMeasure): string =>
  refusals.size === 0 ? "none refused" : [...refusals].map(([reason, count]) => `${count} ${reason}`).join(", ");
