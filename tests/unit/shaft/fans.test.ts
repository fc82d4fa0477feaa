import type { Picture } from "@overcue/client-capture/picture/picture";
import { findFans } from "@overcue/client-capture/shaft/find-fans";
import type { FittedCandidate } from "@overcue/client-capture/shaft/fit-candidate";
import { shaftTuning, type ShaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { smoothShaft } from "@overcue/client-capture/shaft/smooth-shaft";
import {
  startShaftTracker,
  trackShaft,
  type Effort,
  type ShaftTrackerState,
} from "@overcue/client-capture/shaft/track-shaft";
import { makeTurnFilter } from "@overcue/client-capture/shaft/turn-filter";
import { turnRates } from "@overcue/client-capture/shaft/turn-rates";
import { weighFans } from "@overcue/client-capture/shaft/weigh-fans";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import { degreesFromRadians, milliseconds, radians } from "@overcue/shared-geometry/units";
import { expect, test } from "vitest";
import { quantile } from "../../accuracy/quantile.ts";
import { drawBody, drawPicture, drawTurning, seeded, type DrawnLine } from "./draw-picture.ts";

const width = 300;
const height = 300;
const [x, y, torso] = [150, 150, 75];
const step = 33;

const shaftAt = (degrees: number): DrawnLine => {
  const angle = (degrees * Math.PI) / 180;
  return { x: x + 12 * Math.cos(angle), y: y + 12 * Math.sin(angle), angle, length: 110, width: 2.4, level: 215 };
};

const turning = (degrees: number, by: number, random: () => number, level = 215, noise = 3): Picture =>
  drawTurning(width, height, 80, { ...shaftAt(degrees), level }, (by * Math.PI) / 180, x, y, noise, random);

const off = (angle: number, degrees: number): number =>
  degreesFromRadians(wrapAngle(radians(angle - (degrees * Math.PI) / 180)));

/** Shows pictures to a tracker, hands where they are. */
function show(pictures: readonly Picture[], effort: Effort, tuning: Partial<ShaftTuning> = {}): ShaftTrackerState {
  let state = startShaftTracker({ handed: "right", keepEvidence: milliseconds(Infinity), effort, tuning });
  pictures.forEach((picture, i) => {
    const t = milliseconds(step * i);
    ({ state } = trackShaft(state, { picture, t, body: drawBody(t, x, y, torso) }));
  });
  return state;
}

/** The fans of the last of three pictures. */
function fansOf(last: Picture, random: () => number): readonly FittedCandidate[] {
  const before = [0, 1].map(() => drawPicture(width, height, 80, [], 3, random));
  return findFans(show([...before, last], "leisure").sight);
}

test("T47 a shaft that turns while the shutter is open is found by both edges of its fan: where it was half-way, and how far it turned", () => {
  const random = seeded(31);
  const cases = Array.from({ length: 24 }, (_, i) => ({ degrees: 15 * i + 7 * random(), by: 5 + 9 * random() }));
  const free = cases.filter(({ degrees }) => Math.abs(off((degrees * Math.PI) / 180, 215)) > 60);
  const best = free.map(({ degrees, by }) => ({ degrees, by, fan: fansOf(turning(degrees, by, random), random)[0] }));
  const found = best.filter(({ fan, degrees }) => fan !== undefined && Math.abs(off(fan.angle, degrees)) < 8);
  expect(free.length).toBeGreaterThan(14);
  expect(found.length / free.length).toBeGreaterThan(0.85);
  const errors = found.map(({ fan, degrees }) => Math.abs(off(fan?.angle ?? 0, degrees)));
  expect(quantile(errors, 0.5)).toBeLessThan(0.7);
  for (const { fan, degrees, by } of found) {
    const stated = degreesFromRadians(radians(fan?.angleSd ?? 0));
    expect(Math.abs(off(fan?.angle ?? 0, degrees))).toBeLessThan(2.6 * stated);
    expect(stated).toBeGreaterThan(1);
    expect(Math.abs(degreesFromRadians(radians(fan?.turned ?? 0)) - by)).toBeLessThan(0.45 * by + 1);
  }
});

test("T48 what is as broad near the hands as far out, as a sleeve is, is no fan", () => {
  const random = seeded(32);
  for (let i = 0; i < 6; i++) {
    const degrees = -60 + 25 * i;
    const sleeve = { ...shaftAt(degrees), width: 16, level: 150 };
    const fans = fansOf(drawPicture(width, height, 80, [sleeve], 3, random), random);
    expect(fans.filter(({ angle }) => Math.abs(off(angle, degrees)) < 8)).toEqual([]);
  }
});

test("T48 what stood there in either of the two pictures before is no fan", () => {
  const random = seeded(33);
  const fan = turning(40, 9, random);
  const bare = drawPicture(width, height, 80, [], 3, random);
  const near = (fans: readonly FittedCandidate[]): number =>
    fans.filter(({ angle }) => Math.abs(off(angle, 40)) < 6).length;
  expect(near(findFans(show([bare, bare, fan], "leisure").sight))).toBe(1);
  expect(near(findFans(show([bare, fan, fan], "leisure").sight))).toBe(0);
  expect(near(findFans(show([fan, bare, fan], "leisure").sight))).toBe(0);
});

test("T49 a fan speaks only for rates at which the shaft can have turned so far since the picture before", () => {
  const directions = 240;
  const filter = makeTurnFilter(new Float32Array(directions).fill(1 / directions));
  const before = filter.belief.slice();
  const turned = 0.15;
  const angle = 1;
  const fan = { turned, sweepAngle: angle, evidence: 18 } as FittedCandidate;
  weighFans(
    filter,
    [fan, { ...fan, turned: 0, sweepAngle: 3 }],
    new Float32Array(directions).fill(1),
    1 / 30,
    shaftTuning,
  );
  const at = Math.round((angle * directions) / (2 * Math.PI));
  const gained = turnRates.map((_, rate) => {
    const cell = rate * directions + at;
    return (filter.belief[cell] as number) > (before[cell] as number);
  });
  expect(gained).toEqual(turnRates.map((rate) => Math.abs(rate) / 30 >= shaftTuning.fanRate * turned));
  const elsewhere = Math.round((3 * directions) / (2 * Math.PI));
  expect(filter.belief[10 * directions + elsewhere]).toBe(before[10 * directions + elsewhere]);
});

/** A faint shaft that sets off, turns ever faster and comes to rest; 16 ms of every 33 the shutter is open. */
function swing(random: () => number): { readonly angles: readonly number[]; readonly pictures: readonly Picture[] } {
  const rates = [...Array<number>(12).fill(0), 60, 150, 300, 500, 700, 900, 1000, 1000, 900, 700, 500, 300, 150, 60];
  let angle = -40;
  const angles: number[] = [];
  const pictures = [...rates, ...Array<number>(6).fill(0)].map((rate) => {
    angle += (rate * step) / 1000;
    angles.push(angle);
    return turning(angle, rate * 0.016, random, 120, 8);
  });
  return { angles, pictures };
}

test("T47 where there is time a blurred shaft is followed by its fans, within what is stated", () => {
  const { angles, pictures } = swing(seeded(34));
  const count = (tuning: Partial<ShaftTuning>): { readonly tracked: number; readonly wrong: number } => {
    const answers = smoothShaft(show(pictures, "leisure", tuning).evidence, tuning);
    let tracked = 0;
    let wrong = 0;
    answers.forEach((answer, i) => {
      if (answer.status !== "tracked") return;
      tracked++;
      if (Math.abs(off(answer.angle, angles[i] ?? 0)) > 3 * degreesFromRadians(answer.sd)) wrong++;
    });
    return { tracked, wrong };
  };
  const lines = count({ fanFromOdds: 2 });
  const fans = count({});
  expect(fans.tracked).toBeGreaterThan(lines.tracked + 2);
  expect(fans.wrong).toBe(0);
});

test("T47 live there is no time to look for fans", () => {
  const random = seeded(35);
  const bare = drawPicture(width, height, 80, [], 3, random);
  expect(findFans(show([bare, bare, turning(40, 9, random)], "live").sight)).toEqual([]);
});
