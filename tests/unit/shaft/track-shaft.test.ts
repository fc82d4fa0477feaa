import { startShaftTracker, trackShaft } from "@overcue/client-capture/shaft/track-shaft";
import { shaftTuning, type ShaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import { smoothShaft } from "@overcue/client-capture/shaft/smooth-shaft";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { degreesFromRadians, milliseconds, radians, type Milliseconds } from "@overcue/shared-geometry/units";
import { wrapAngle } from "@overcue/shared-geometry/angle";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawBody, drawPicture, seeded, type DrawnLine } from "./draw-picture.ts";

const width = 300;
const height = 400;
const hands = { x: 150, y: 200 };
const torso = 75;
const forever = milliseconds(Infinity);

interface Sequence {
  readonly angles: readonly (number | null)[];
  readonly level?: number;
  readonly shaft?: number;
  readonly extra?: readonly DrawnLine[];
  readonly step?: number;
  readonly mirrored?: boolean;
}

/** Runs the tracker over drawn pictures; an angle of null draws no shaft. Degrees in, answers out. */
function run({ angles, level = 90, shaft = 190, extra = [], step = 33, mirrored = false }: Sequence) {
  const random = seeded(5);
  let state = startShaftTracker({
    ...{ handed: mirrored ? "left" : "right", keepEvidence: forever },
    ...{ effort: "leisure", lagged: true },
  });
  const now: ShaftInImage[] = [];
  const lagged: (ShaftInImage | null)[] = [];
  angles.forEach((angle, i) => {
    const lines = angle === null ? extra : [...extra, shaftAt(angle, shaft)];
    const plain = drawPicture(width, height, level, lines, 4, random);
    const body = drawBody(i * step, hands.x, hands.y, torso);
    const picture = mirrored ? { ...plain, luma: mirror(plain.luma) } : plain;
    const seenBody = mirrored
      ? { ...body, landmarks: body.landmarks.map((each) => ({ ...each, x: width - each.x })) }
      : body;
    const result = trackShaft(state, { picture, t: milliseconds(i * step), body: seenBody });
    state = result.state;
    now.push(result.output.now);
    lagged.push(result.output.lagged);
  });
  return { now, lagged, full: smoothShaft(state.evidence), evidence: state.evidence };
}

const shaftAt = (degrees: number, level: number): DrawnLine => {
  const angle = (degrees * Math.PI) / 180;
  return {
    x: hands.x + 12 * Math.cos(angle),
    y: hands.y + 12 * Math.sin(angle),
    angle,
    length: 115,
    width: 2.2,
    level,
  };
};

function mirror(luma: Uint8Array): Uint8Array {
  const out = new Uint8Array(luma.length);
  for (let i = 0; i < luma.length; i++) {
    const column = i % width;
    out[i] = luma[i - column + width - 1 - column] ?? 0;
  }
  return out;
}

/** Degrees between an answer and the truth; Infinity where there is no answer. */
function errorOf(answer: ShaftInImage | undefined, degrees: number): number {
  if (answer === undefined || answer.status === "lost") return Infinity;
  return Math.abs(degreesFromRadians(wrapAngle(radians(answer.angle - (degrees * Math.PI) / 180))));
}

const turning = (count: number, from: number, perPicture: number): number[] =>
  Array.from({ length: count }, (_, i) => from + i * perPicture);

/** Evidence of one picture in a direction (degrees), with some of the tuning replaced. */
function evidenceOf(line: DrawnLine, degrees: number, tuning: Partial<ShaftTuning>): number {
  const state = startShaftTracker({ handed: "right", keepEvidence: forever, effort: "leisure", tuning });
  const picture = drawPicture(width, height, 90, [line], 4, seeded(5));
  trackShaft(state, { picture, t: milliseconds(0), body: drawBody(0, hands.x, hands.y, torso) });
  const sweep = state.evidence[0]?.sweep ?? new Float32Array();
  return sweep[Math.round((degrees / 360) * sweep.length)] ?? Number.NaN;
}

test("T38 a stick on the ground that points at the hands counts less for what it lacks next to them, and a shaft out of them does not", () => {
  const stick: DrawnLine = {
    x: hands.x + 1.2 * torso * Math.cos(Math.PI / 3),
    y: hands.y + 1.2 * torso * Math.sin(Math.PI / 3),
    angle: Math.PI / 3,
    length: 0.8 * torso,
    width: 2.2,
    level: 190,
  };
  const forgiving = { startCost: 0 };
  const lost = evidenceOf(stick, 60, forgiving) - evidenceOf(stick, 60, {});
  expect(lost).toBeGreaterThan(2);
  const shaft = shaftAt(60, 190);
  expect(evidenceOf(shaft, 60, {})).toBeCloseTo(evidenceOf(shaft, 60, forgiving), 1);
});

describe("one shaft", () => {
  test.each([
    ["bright on dark", 90, 190],
    ["dark on bright", 190, 60],
  ])("T1 a still shaft at address is tracked to half a degree: %s", (_, level, shaft) => {
    const { now, full } = run({ angles: turning(15, 52, 0), level, shaft });
    expect(now.at(-1)?.status).toBe("tracked");
    expect(errorOf(now.at(-1), 52)).toBeLessThan(0.5);
    expect(Math.max(...full.map((each) => errorOf(each, 52)))).toBeLessThan(0.5);
  });

  test("T2 a turning shaft is followed, with the sign of its rate", () => {
    const angles = turning(24, 50, -8);
    const { now, full } = run({ angles });
    angles.slice(6).forEach((angle, i) => {
      expect(errorOf(now[i + 6], angle)).toBeLessThan(1);
    });
    const last = full[15];
    expect(last?.status).toBe("tracked");
    if (last?.status !== "tracked") throw new Error("not tracked");
    expect(last.angularRate).toBeLessThan(-2);
  });

  test("T3 a mirrored picture of a left-hander gives the mirrored direction", () => {
    const angles = turning(14, 55, -4);
    const right = run({ angles });
    const left = run({ angles, mirrored: true });
    right.full.forEach((answer, i) => {
      const other = left.full[i];
      expect(other?.status).toBe(answer.status);
      if (answer.status === "lost") return;
      expect(errorOf(other, 180 - degreesFromRadians(answer.angle))).toBeLessThan(0.3);
    });
  });

  test("T4 the end of the run is the head, to a fifth of a torso", () => {
    const { now } = run({ angles: turning(12, 60, 0) });
    const last = now.at(-1);
    expect(last?.status).toBe("tracked");
    if (last?.status !== "tracked" || last.head === null) throw new Error("no head");
    const length = Math.hypot(last.head.x - hands.x, last.head.y - hands.y);
    expect(Math.abs(length - 127)).toBeLessThan(0.2 * torso);
  });
});

describe("what is no shaft", () => {
  test("T5 without a pose the answer is lost for want of hands", () => {
    const picture = drawPicture(80, 80, 100, [], 3, seeded(1));
    const { output } = trackShaft(startShaftTracker({ handed: "right" }), { picture, t: milliseconds(0), body: null });
    expect(output.now).toEqual({ status: "lost", t: 0, reason: "no-hands" });
  });

  test("T5 half a second after the last pose nobody knows where the hands are, whatever stands where they were", () => {
    const random = seeded(5);
    const state = startShaftTracker({ handed: "right" });
    const body = drawBody(0, hands.x, hands.y, torso);
    const answers = Array.from({ length: 20 }, (_, i) => {
      const picture = drawPicture(width, height, 90, [shaftAt(60, 190)], 4, random);
      return trackShaft(state, { picture, t: milliseconds(i * 33), body }).output.now;
    });
    expect(answers[14]?.status).toBe("tracked");
    expect(answers.slice(16)).toEqual(answers.slice(16).map(({ t }) => ({ status: "lost", t, reason: "no-hands" })));
  });

  test("T6 empty hands over noise are lost in every picture", () => {
    const { now, full } = run({ angles: turning(20, 0, 0).map(() => null) });
    expect(now.filter((each) => each.status !== "lost")).toEqual([]);
    expect(full.filter((each) => each.status !== "lost")).toEqual([]);
  });

  test.each([0, -25, 120, -140])(
    "T55 what stands at %d degrees from resting low hands is none, however long it is looked at",
    (angle) => {
      const eave = shaftAt(angle, 190);
      const { now, full } = run({ angles: turning(45, 0, 0).map(() => null), extra: [eave] });
      expect(now.filter(({ status }) => status === "tracked")).toEqual([]);
      expect(full.filter(({ status }) => status === "tracked")).toEqual([]);
    },
  );

  test("T7 a still line behind the hands does not take over from a turning shaft", () => {
    const horizon: DrawnLine = { x: 0, y: 205, angle: 0, length: width, width: 2.5, level: 230 };
    const angles = turning(24, 60, -9);
    const { full } = run({ angles, extra: [horizon] });
    // Where the shaft itself lies along the horizon nobody can tell them apart.
    const clear = angles.flatMap((angle, i) => (Math.abs(angle) < 15 ? [] : [errorOf(full[i], angle)]));
    const wrong = clear.filter((error) => error !== Infinity && error > 3);
    expect(wrong).toEqual([]);
    expect(clear.filter((error) => error <= 3).length).toBeGreaterThan(0.8 * clear.length);
  });
});

describe("time", () => {
  test("T8 the full pass bridges pictures in which the shaft cannot be seen, and says that it is predicted", () => {
    const angles = turning(20, 60, -6);
    const { full } = run({ angles: angles.map((angle, i) => (i === 10 || i === 11 ? null : angle)) });
    for (const i of [10, 11]) {
      const answer = full[i];
      expect(answer?.status).toBe("predicted");
      if (answer?.status !== "predicted") continue;
      expect(errorOf(answer, angles[i] ?? 0)).toBeLessThan(3 * degreesFromRadians(answer.sd));
    }
  });

  test("T9 a lagged answer is for the picture that many pictures before", () => {
    const { lagged } = run({ angles: turning(8, 60, -2) });
    expect(lagged.map((each) => each?.t ?? null)).toEqual([
      ...Array.from({ length: shaftTuning.lag }, () => null),
      ...[0, 1, 2, 3, 4].map((i) => i * 33),
    ]);
  });

  test("T10 evidence is kept no longer than asked, and not at all unless asked", () => {
    const lengths = [0, 100].map((keep) => {
      const state = startShaftTracker({ handed: "right", keepEvidence: milliseconds(keep) });
      const picture = drawPicture(60, 60, 100, [], 3, seeded(1));
      for (let t = 0; t <= 300; t += 20) {
        trackShaft(state, { picture, t: milliseconds(t), body: drawBody(t, 30, 30, 20) });
      }
      return state.evidence.length;
    });
    expect(lengths).toEqual([0, 6]);
  });

  test("T11 nothing to smooth gives nothing, and pictures without hands stay lost", () => {
    expect(smoothShaft([])).toEqual([]);
    const blind = {
      t: milliseconds(5),
      handed: "right",
      hands: null,
      candidates: [],
      long: 0,
      longest: Infinity,
    } as const;
    expect(
      smoothShaft([
        {
          ...blind,
          sweep: new Float32Array(0),
          side: new Float32Array(0),
          novelty: new Float32Array(0),
          clutter: 0,
          emerging: 0,
        },
      ]),
    ).toEqual([{ status: "lost", t: 5, reason: "no-hands" }]);
  });
});

test("T12 no picture, size or pose makes the tracker throw or answer with a number that is none", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 2, max: 90 }),
      fc.integer({ min: 2, max: 90 }),
      fc.integer({ min: -60, max: 150 }),
      fc.integer({ min: -60, max: 150 }),
      fc.integer({ min: 0, max: 60 }),
      fc.integer(),
      (wide, high, x, y, size, seed) => {
        const random = seeded(seed);
        const state = startShaftTracker({ handed: "left", keepEvidence: forever, effort: "leisure" });
        for (let i = 0; i < 3; i++) {
          const t: Milliseconds = milliseconds(i * 16);
          const picture = drawPicture(wide, high, 128, [], 120, random);
          const { now } = trackShaft(state, { picture, t, body: drawBody(t, x + i, y, size) }).output;
          expect(now.t).toBe(t);
          if (now.status === "lost") continue;
          const numbers = [now.grip.x, now.grip.y, now.angle, now.sd, now.angularRate, now.offsetSd];
          expect(numbers.filter((each) => !Number.isFinite(each))).toEqual([]);
          expect(now.sd).toBeGreaterThan(0);
        }
      },
    ),
    { numRuns: 40 },
  );
});

describe("a rod and the hands", () => {
  /** A rod out of the butt is the brighter; the shaft is told by the motion that came before. */
  test("T23 with a rod along the shaft a picture that shows only the rod is still answered with the head's side", () => {
    const random = seeded(6);
    const state = startShaftTracker({ handed: "right", rodAlong: true });
    const answers = turning(26, 56, -3).map((degrees, i) => {
      const angle = (degrees * Math.PI) / 180;
      const side = i < 18 ? 0 : Math.PI;
      const line: DrawnLine = {
        x: hands.x + 12 * Math.cos(angle + side),
        y: hands.y + 12 * Math.sin(angle + side),
        angle: angle + side,
        length: 100,
        width: 2.2,
        level: 190,
      };
      const picture = drawPicture(width, height, 90, [line], 4, random);
      const t = milliseconds(i * 33);
      return trackShaft(state, { picture, t, body: drawBody(t, hands.x, hands.y, torso) }).output.now;
    });
    const late = answers.slice(20);
    const [last] = late.slice(-1);
    expect(late.filter((answer) => answer.status === "tracked").length).toBeGreaterThanOrEqual(4);
    const errors = late.flatMap((answer, i) => (answer.status === "lost" ? [] : [errorOf(answer, 56 - 3 * (20 + i))]));
    expect(Math.max(...errors)).toBeLessThan(3);
    expect(last?.status === "tracked" ? last.head : null).toBeNull();
  });

  test("T24 a line that stays wide of the hands never leads them farther than a quarter of a torso away", () => {
    const state = startShaftTracker({ handed: "right" });
    const random = seeded(7);
    for (let i = 0; i < 40; i++) {
      const line: DrawnLine = { x: hands.x + 28, y: 60, angle: Math.PI / 2, length: 280, width: 2.4, level: 200 };
      const t = milliseconds(i * 33);
      const picture = drawPicture(width, height, 90, [line], 4, random);
      trackShaft(state, { picture, t, body: drawBody(t, hands.x, hands.y, torso) });
      const { x, y } = state.sight.hands.now;
      // The hands as `drawBody` places them for the tracker.
      expect(Math.hypot(x - hands.x, y - hands.y)).toBeLessThanOrEqual(0.26 * torso);
    }
  });
});
