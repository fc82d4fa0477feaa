import { bandSubjectAt } from "@overcue/shared-geometry/checkpoints";
import { decideBand } from "@overcue/shared-geometry/decide-band";
import { metres } from "@overcue/shared-geometry/units";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { CheckpointReading, Rep } from "@overcue/shared-geometry/wire/rep";

/** A simulated golfer: where the club points by habit, and how much of a cue arrives in reality. Metres along y. */
export interface GolferModel {
  /** The habit at each checkpoint where a place is read. */
  readonly habit: Readonly<Partial<Record<CheckpointReading["checkpoint"], number>>>;
  /** Share of the felt change (cue minus habit) that arrives at once: 0 none, 1 all. */
  readonly carryOver: number;
  /** Scatter from rep to rep and the measurement's error, one standard deviation each. */
  readonly scatter: number;
  readonly sd: number;
  /** The source of chance: numbers in [0, 1). */
  readonly random: () => number;
}

/** A flat-back, steep-down golfer without any scatter. */
export const flatToSteepGolfer: GolferModel = {
  habit: {
    takeaway: 0.02,
    "shaft-level-back": 0.3,
    "arm-level-back": -0.3,
    "arm-level-down": 0.35,
    "shaft-level-down": 0.3,
  },
  carryOver: 0.5,
  scatter: 0,
  sd: 0.02,
  random: () => 0.5,
};

/** The golfer's next rep under the cue in `state`: the habit while nothing is cued, else the habit plus the share of the felt change that arrives. */
export function makeRep(golfer: GolferModel, state: PracticeState, at: number, id: string): Rep {
  const checkpoints = Object.entries(golfer.habit).map(([name, habit], index): CheckpointReading => {
    const checkpoint = name as CheckpointReading["checkpoint"];
    const aim = state.aims.find((each) => each.checkpoint === checkpoint);
    const cued = aim && state.mode === "practice" ? golfer.carryOver * ((aim.felt.from + aim.felt.to) / 2 - habit) : 0;
    return readingAt(
      checkpoint,
      habit + cued + golfer.scatter * normal(golfer.random),
      golfer.sd,
      at + 200 * index,
      state,
    );
  });
  return {
    id,
    kind: state.stage === "slow-rehearsal" ? "rehearsal" : "full",
    startedAt: at,
    endedAt: at + 2000,
    handed: state.golfer.handed,
    calibration: "station",
    checkpoints,
    complete: true,
    missing: [],
    tempo: { backswingSeconds: 0.9, downswingSeconds: 0.3, ratio: 3 },
    trackedShare: 1,
    trajectory: [
      [at, 0, 0.2, 0.8, 1.5, -0.9],
      [at + 16, 0, 0.21, 0.81, 1.52, -0.91],
    ],
  };
}

/** A reading of the place that the checkpoint is about, and of nothing else. */
export function readingAt(
  checkpoint: CheckpointReading["checkpoint"],
  y: number,
  sd: number,
  at: number,
  state: Pick<PracticeState, "layout">,
): CheckpointReading {
  const { toeLine, heelLine, tolerance } = state.layout;
  const layout = { toeLine: metres(toeLine), heelLine: metres(heelLine), tolerance: metres(tolerance) };
  const nothing = { defined: false as const, reason: "not-read-here" as const };
  const place = { defined: true as const, x: 0, y, sdX: sd, sdY: sd, band: decideBand(y, sd, layout) };
  const isButt = bandSubjectAt[checkpoint] === "butt-point";
  return {
    checkpoint,
    at,
    sdMs: 4,
    readOuts: {
      buttPoint: isButt ? place : nothing,
      headPoint: isButt ? nothing : place,
      elevation: nothing,
      direction: nothing,
      handHeight: nothing,
    },
  };
}

/** A standard normal number by Box and Muller. */
function normal(random: () => number): number {
  return Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
}
