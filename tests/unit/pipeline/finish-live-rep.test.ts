import { expect, it } from "vitest";
import { goneOver } from "@overcue/client-capture/pipeline/finish-live-rep";
import type { FinishedRep } from "@overcue/client-capture/swing/finish-rep";
import { worldPoint } from "@overcue/shared-geometry/point";
import { milliseconds } from "@overcue/shared-geometry/units";
import { goOverSteps, stepSightings } from "../../accuracy/clock/replay-sightings.ts";
import { trueReps } from "../../accuracy/clock/true-reps.ts";
import { timeOf } from "../../fakes/clock-run.ts";
import { firstOf } from "../../scenes/session/first-of.ts";
import { drawnSession, practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

const shaft = { t: milliseconds(0), grip: worldPoint(0, 0.4, 0.8), toHead: { x: -1, y: 0, z: 0 }, covariance: [] };

/** A rep from one to another moment with its impact at a third. */
const repOf = (startedAt: number, impact: number, endedAt: number): FinishedRep => ({
  ...{ kind: "full", startedAt: milliseconds(startedAt), endedAt: milliseconds(endedAt) },
  checkpoints: [{ checkpoint: "impact", t: milliseconds(impact), sd: 10, shaft }],
  ...{ tempo: null, complete: false, missing: [], trackedShare: 1, samples: [] },
});

it("K4.3 a rep is the same in the second pass wherever that has it end; the rep before it is another", () => {
  const before = repOf(1000, 2200, 3700);
  const first = repOf(4000, 5200, 5500);
  const second = repOf(4100, 5150, 6700);
  expect(goneOver(first, [before, second])).toBe(second);
  expect(goneOver(first, [before])).toBe(first);
});

it("K4.3 pictures that end in a rep's follow-through are enough to go over it", () => {
  const session = practiceSession(9000, drawnSession);
  const impact = timeOf(trueReps(session.motion)[0], "impact");
  const sightings = firstOf(simulateSightings(session, usualSightErrors), impact + 1000);
  const stepped = stepSightings(session, sightings);
  expect(stepped.outputs.map(({ swing }) => swing.finished).filter((rep) => rep !== null)).toEqual([]);
  const reps = goOverSteps(stepped);
  expect(reps).toHaveLength(1);
  const told = timeOf(reps[0], "impact");
  expect(Math.abs(told - impact)).toBeLessThan(100);
});
