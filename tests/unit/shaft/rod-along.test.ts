import { cutLineWindow, makeLineWindow } from "@overcue/client-capture/shaft/line-window";
import { makeBodyMarks, markBody } from "@overcue/client-capture/shaft/mark-body";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { emptyWorkPicture, shrinkPicture } from "@overcue/client-capture/shaft/work-picture";
import { milliseconds } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { drawBody, drawPicture, seeded } from "./draw-picture.ts";

const torso = 80;
const plain = drawPicture(300, 300, 100, [], 2, seeded(3));

/** How many cells about the hands are marked as body. */
function marked(rodAlong: boolean): number {
  const window = makeLineWindow(100);
  const work = emptyWorkPicture();
  shrinkPicture(plain, 1, work, null, shaftTuning.rodGain);
  cutLineWindow(window, work, null, 150, 150, 90, 0);
  const marks = makeBodyMarks(window.size);
  markBody(marks, drawBody(0, 150, 150, torso), 1, window, torso, rodAlong, shaftTuning);
  return marks.free.reduce((sum, level) => sum + (level < 255 ? 1 : 0), 0);
}

test("T34 arms are marked wider with a rod along the shaft", () => {
  expect(marked(true)).toBeGreaterThan(1.1 * marked(false));
});

/** Directions that are looked at in the last of ten pictures in which there is nothing. */
function lookedAt(rodAlong: boolean): number {
  let state = startShaftTracker({ handed: "right", effort: "live", rodAlong });
  for (let i = 0; i < 10; i++) {
    const t = milliseconds(33 * i);
    ({ state } = trackShaft(state, { picture: plain, t, body: drawBody(t, 150, 150, torso) }));
  }
  return state.sight.sweep.wanted.reduce((sum, wanted) => sum + wanted, 0);
}

test("T34 while the odds name no direction, more of them are looked at with a rod", () => {
  expect(lookedAt(true)).toBeGreaterThan(lookedAt(false));
});
