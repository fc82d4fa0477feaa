import { expect, it } from "vitest";
import { goOverSteps, stepSightings } from "../../accuracy/clock/replay-sightings.ts";
import { firstOf } from "../../scenes/session/first-of.ts";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

it("K3.1 K3.5 a finish that is held, the club lifted the wrong way round in it, is no rep of its own, live or gone over", () => {
  // Its two full swings are over at 8 and 15 s; after each the club is held over the shoulder and let down again.
  const session = practiceSession(9015);
  const stepped = stepSightings(session, firstOf(simulateSightings(session, usualSightErrors), 18_000));
  const live = stepped.outputs.flatMap(({ swing }) => (swing.finished === null ? [] : [swing.finished.kind]));
  expect(live).toEqual(["full", "full"]);
  expect(goOverSteps(stepped).map(({ kind }) => kind)).toEqual(["full", "full"]);
});
