import { flatBack } from "@overcue/server/practice/drill/built-in/flat-back";
import type { Drill } from "@overcue/server/practice/drill/drill-schema";
import type { PracticeEvent, RepRecord } from "@overcue/server/practice/journal/events";
import { emptyPractice, type GolferBook, type Practice } from "@overcue/server/practice/journal/state";
import { step } from "@overcue/server/practice/journal/step";
import { feltPlace, ladderOf, targetsOf, type Target } from "@overcue/server/practice/journal/targets";
import { practiceSettings } from "@overcue/server/practice/settings";
import { gaussian } from "../../scenes/random.ts";
import { readingAt } from "../../fakes/golfer-model.ts";
import type { SimulatedGolfer } from "./draw-golfer.ts";
import { learn, respond, sleep, untaught, type Reading } from "./two-rate-learner.ts";

const checkpoint = "arm-level-back";
const blocksPractised = 12;

/** What an arm does with the practice rules. `cue`: what is set and locked once the baseline is known (felt minus wanted, metres); null leaves the rules alone. */
export interface Arm {
  readonly name: string;
  readonly cue: ((target: Target) => number) | null;
  /** Whether a person says yes where the rules ask to go past the cap, to this felt place (y, metres). */
  readonly yes: (felt: number) => boolean;
}

/** One golfer's way: carry-over block by block as the book has it and as it really was, and what a test without feedback showed the next day. */
export interface Course {
  readonly carryOver: readonly number[];
  readonly trueCarryOver: readonly number[];
  readonly gains: readonly number[];
  readonly nextDay: number;
}

/** One checkpoint, wanted on the ball line, exaggerated to whichever side is needed. */
const drill: Drill = {
  ...flatBack,
  id: "simulated",
  name: "Simulated",
  checkpoints: [
    {
      checkpoint,
      wanted: { band: "ball-line" },
      cue: { direction: "either", usual: { band: "heel-line" } },
      say: "Point the butt end at the stick that is named.",
    },
  ],
};

/**
 * Takes a golfer through baseline, twelve blocks and the next day's test, on the practice rules as they are shipped: every rep is an entry of the journal and is folded by
 * `step`. Only the golfer is simulated.
 */
export function practise(golfer: SimulatedGolfer, arm: Arm, reading: Reading): Course {
  const random = golfer.chance();
  let at = 0;
  let reps = 0;
  let practice = [
    { type: "golfer-added", golfer: { id: "g", name: "Simulated", handed: "right" } } as const,
    { type: "golfer-chosen" } as const,
    { type: "drill-saved", drill } as const,
    { type: "drill-chosen", drillId: drill.id } as const,
  ].reduce((before: Practice, event) => happen(before, event), emptyPractice);

  function happen(before: Practice, event: PracticeEvent): Practice {
    at += 20_000;
    return step(before, { sequence: at, at, by: "simulation", golferId: "g", event });
  }
  const makeRep = (reached: number): void => {
    const y = -golfer.change + reached + golfer.scatter * gaussian(random) + golfer.measurementSd * gaussian(random);
    reps += 1;
    practice = happen(practice, { type: "rep-recorded", rep: record(practice, y, golfer.measurementSd, at, reps) });
  };

  for (let rep = 0; rep < practiceSettings.baseline.reps; rep++) makeRep(0);
  if (arm.cue) {
    const metres = arm.cue(onlyTarget(practice));
    practice = happen(practice, { type: "exaggeration-set", checkpoint, metres });
    practice = happen(practice, { type: "cue-locked", locked: true });
  }

  let state = untaught;
  const trueCarryOver: number[] = [];
  const gains: number[] = [];
  for (let block = 0; block < blocksPractised; block++) {
    const felt = feltPlace(onlyTarget(practice)) + golfer.change;
    gains.push(felt / golfer.change);
    let reachedInBlock = 0;
    for (let rep = 0; rep < practiceSettings.block.reps; rep++) {
      const { reached, error } = respond(reading, state, golfer, felt);
      makeRep(reached);
      reachedInBlock += reached / practiceSettings.block.reps;
      state = learn(state, error);
    }
    trueCarryOver.push(reachedInBlock / golfer.change);
    const proposal = ladderOf(bookOf(practice)).proposals[checkpoint];
    if (proposal && arm.yes(onlyTarget(practice).wantedPlace + proposal.exaggerateBy))
      practice = happen(practice, { type: "proposals-accepted" });
  }
  const carryOver = ladderOf(bookOf(practice)).blocks.map(({ places }) => places[0]?.carryOver?.value ?? Number.NaN);

  state = sleep(state, golfer.keptOvernight);
  practice = happen(practice, { type: "mode-started", mode: "retention-test" });
  for (let rep = 0; rep < practiceSettings.retention.reps; rep++) {
    const { reached } = respond(reading, state, { ...golfer, carryOver: 0 }, 0);
    makeRep(reached);
    state = learn(state, 0);
  }
  const nextDay = bookOf(practice).tests[0]?.places[0]?.carryOver?.value ?? Number.NaN;
  return { carryOver, trueCarryOver, gains, nextDay };
}

function bookOf(practice: Practice): GolferBook {
  const book = practice.golfers["g"];
  if (!book) throw new Error("the simulated golfer is gone");
  return book;
}

function onlyTarget(practice: Practice): Target {
  const [target] = targetsOf(bookOf(practice), practice);
  if (!target) throw new Error("the simulated drill has one checkpoint");
  return target;
}

function record(practice: Practice, y: number, sd: number, at: number, number: number): RepRecord {
  const target = onlyTarget(practice);
  const { station } = bookOf(practice);
  return {
    id: `00000000-0000-4000-8000-${String(number).padStart(12, "0")}`,
    kind: "rehearsal",
    startedAt: at,
    endedAt: at + 2000,
    handed: "right",
    calibration: "station",
    checkpoints: [readingAt(checkpoint, y, sd, at, { layout: station })],
    complete: true,
    missing: [],
    tempo: null,
    trackedShare: 1,
    shown: [{ checkpoint: target.checkpoint, felt: feltPlace(target) }],
  };
}
