import { defaultStation } from "@overcue/shared-geometry/default-station";
import { firstDrill } from "../drill/built-in/built-in-drills.ts";
import { stages } from "../stage/stages.ts";
import type { Golfer } from "./events.ts";
import type { GolferBook, Ladder } from "./state.ts";

/** A golfer before the first rep: a 7-iron station, the first drill, a baseline to make. */
export function newGolfer(golfer: Golfer): GolferBook {
  const { club, toeLine, heelLine, tolerance } = defaultStation("7-iron", golfer.handed);
  return {
    golfer,
    station: { club, toeLine, heelLine, tolerance },
    drillId: firstDrill,
    mode: "baseline",
    cueMode: "adaptive",
    lockedBy: null,
    feltQuestion: false,
    wanted: {},
    baselines: {},
    ladders: {},
    session: null,
    test: null,
    tests: [],
    lastPracticeAt: null,
    offer: null,
    feltGaps: [],
    notes: [],
    starred: [],
    verdict: null,
    heldBack: null,
    repsInAll: 0,
  };
}

/** The foot of the ladder. */
export const newLadder: Ladder = {
  stage: "slow-rehearsal",
  rodBack: false,
  feedback: stages["slow-rehearsal"].feedback,
  repsInStage: 0,
  cues: {},
  arrives: {},
  proposals: {},
  block: [],
  blocks: [],
  lastJudgement: null,
};
