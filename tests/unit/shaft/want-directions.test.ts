import { expect, test } from "vitest";
import { makeLineSweep } from "@overcue/client-capture/shaft/line-sweep-state";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { makeTurnFilter, type TurnFilter } from "@overcue/client-capture/shaft/turn-filter";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { wantDirections } from "@overcue/client-capture/shaft/want-directions";
import { milliseconds } from "@overcue/shared-geometry/units";
import { drawBody, drawPicture, seeded } from "./draw-picture.ts";

const turns = shaftTuning.turnsOfOthers;
const sweep = makeLineSweep(20, shaftTuning);
const halfTurn = sweep.directions / 2;

/** Which directions of the half turn are looked at in each of the pictures of one round, where the odds name none. */
function oneRound(): boolean[][] {
  const filter: TurnFilter = makeTurnFilter(new Float32Array(sweep.directions).fill(1 / sweep.directions));
  filter.belief.fill(0);
  return Array.from({ length: turns }, (_, count) => {
    wantDirections(sweep, filter, count, false, shaftTuning);
    return [...sweep.wanted].map((wanted) => wanted === 1);
  });
}

test("T40 every direction is looked at once a round", () => {
  const round = oneRound();
  for (let direction = 0; direction < halfTurn; direction++) {
    expect(round.filter((wanted) => wanted[direction]).length).toBe(1);
  }
});

test("T40 no steady turn meets the looks within the width of a line more than half of the time", () => {
  const round = oneRound();
  const width = 2 * Math.round(shaftTuning.peakReach / shaftTuning.sweepStep) + 1;
  for (let turn = -4; turn <= 4; turn += 0.25) {
    for (let first = 0; first < halfTurn; first++) {
      const inside = Math.min(turns, turn === 0 ? turns : Math.ceil(width / Math.abs(turn)));
      const met = round
        .slice(0, inside)
        .filter((wanted, picture) => wanted[(first + Math.round(turn * picture) + 4 * halfTurn) % halfTurn]).length;
      expect(met, `${turn} directions a picture from ${first}`).toBeLessThanOrEqual(Math.max(1, Math.ceil(inside / 2)));
    }
  }
});

test("T40 the first picture in which the hands are known is looked at all round, the next ones in part", () => {
  const picture = drawPicture(300, 400, 110, [], 4, seeded(2));
  let tracker = startShaftTracker({ handed: "right" });
  const looked = [null, drawBody(0, 150, 200, 90), drawBody(0, 150, 200, 90)].map((body, i) => {
    tracker = trackShaft(tracker, { picture, t: milliseconds((i * 1000) / 60), body }).state;
    return tracker.sight.sweep.wanted.reduce((sum, wanted) => sum + wanted, 0);
  });
  expect(looked[1]).toBe(halfTurn);
  expect(looked[2]).toBeLessThan(halfTurn / 2);
});
