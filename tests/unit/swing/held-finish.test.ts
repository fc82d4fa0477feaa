import { expect, it } from "vitest";
import { replaySightings } from "../../accuracy/clock/replay-sightings.ts";
import { firstOf } from "../../scenes/session/first-of.ts";
import { practiceSession } from "../../scenes/session/practice-session.ts";
import { usualSightErrors } from "../../scenes/session/sight-errors.ts";
import { simulateSightings } from "../../scenes/session/simulate-sightings.ts";

it("K3.5 a finish that is held, the club lifted the wrong way round in it, is no rep of its own", () => {
  // Its one full swing is over at 8 s; until 12 s the club is held over the shoulder and let down again.
  const session = practiceSession(9015);
  const { reps } = replaySightings(session, firstOf(simulateSightings(session, usualSightErrors), 12_000));
  expect(reps.map(({ kind }) => kind)).toEqual(["full"]);
});
