import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { metres } from "@overcue/shared-geometry/units";
import { currentAim } from "@overcue/client-display/ground-view/current-aim";
import { drawAimBands, drawAimTags } from "@overcue/client-display/ground-view/draw-list/draw-aim";
import { clearOfTags } from "@overcue/client-display/ground-view/draw-list/clear-of-tags";
import { drawLive } from "@overcue/client-display/ground-view/draw-list/draw-live";
import type { Shape } from "@overcue/client-display/ground-view/draw-list/shapes";
import { groundFrame } from "@overcue/client-display/ground-view/draw-list/ground-frame";
import { liveOnGround, stalePicture } from "@overcue/client-display/ground-view/live-on-ground";
import { liveSubject } from "@overcue/client-display/ground-view/live-subject";
import { repMarks } from "@overcue/client-display/ground-view/rep-marks";
import { targetStrength } from "@overcue/client-display/ground-view/target-strength";
import { keyWordOf } from "@overcue/client-display/words/key-word";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  demoAims,
  liveEstimate,
  lostEstimate,
  practiceState,
  readingAt,
  repIds,
  repOf,
  sceneLayout,
  sure,
  checkpointTold,
} from "../../fakes/practice-scenes.ts";

const [back, down] = demoAims;
if (back === undefined || down === undefined) throw new Error("the scene has two aims");
const frame = groundFrame({ x: 0, y: 0, width: 1000, height: 800 }, sceneLayout, "right", "in-front");
const seen = liveEstimate(1, 1000, { x: -0.1, y: 0.22, sdX: 0.02, sdY: 0.05, band: sure("ball-to-toe") });

describe("D6 what is shown of the club", () => {
  test("D6 the aim is the next checkpoint of the swing, and the last one stays", () => {
    const after = (passed: CheckpointId | null) => currentAim(demoAims, { passed, held: null });
    expect(after(null)).toBe(back);
    expect(after("address")).toBe(back);
    expect(after("arm-level-back")).toBe(down);
    expect(after("impact")).toBe(down);
    expect(currentAim([], { passed: "top", held: null })).toBeNull();
  });

  test("D6 while the club is held at a checkpoint with an aim, that is the one; held at another, the next", () => {
    expect(currentAim(demoAims, { passed: "arm-level-back", held: "arm-level-back" })).toBe(back);
    expect(currentAim(demoAims, { passed: "shaft-level-back", held: "shaft-level-back" })).toBe(back);
    expect(currentAim(demoAims, { passed: "top", held: "top" })).toBe(down);
  });

  test("D6 a checkpoint that reads the head never shows the butt instead", () => {
    const { subject, readOut } = liveSubject(seen.readOuts, "shaft-level-back");
    expect(subject).toBe("head-point");
    expect(readOut.defined).toBe(false);
    expect(keyWordOf(seen, 50, "shaft-level-back").kind).toBe("none");
    expect(liveOnGround(seen, 50, "shaft-level-back", metres(0.8)).place).toBeNull();
  });

  test("D6 an old picture and a lost shaft show nothing and claim no band", () => {
    for (const [estimate, age] of [
      [seen, stalePicture + 1],
      [lostEstimate(2, 1000, "blurred-away"), 10],
      [null, null],
    ] as const) {
      expect(liveOnGround(estimate, age, "arm-level-back", metres(0.8))).toEqual({ shaft: null, place: null });
      expect(keyWordOf(estimate, age, "arm-level-back").kind).toBe("none");
    }
  });

  test("D6 the soft patch spans two standard errors to each side", () => {
    const live = liveOnGround(seen, 50, "arm-level-back", metres(0.8));
    const patch = drawLive(frame, live, 10, 20).find(({ kind }) => kind === "ellipse");
    expect(patch).toMatchObject({ radiusX: 2 * 0.02 * frame.pixelsPerMetre, radiusY: 2 * 0.05 * frame.pixelsPerMetre });
  });

  test("D6 a place off the screen is a triangle at its edge that points out", () => {
    const beyond = { shaft: null, place: { subject: "butt-point" as const, x: 0, y: -3, sdX: 0.02, sdY: 0.02 } };
    const mark = drawLive(frame, beyond, 40, 20).find(({ kind }) => kind === "mark");
    expect(mark).toMatchObject({ shape: "triangle-up", centre: { y: 20 } });
  });
});

/** Where a word is painted: 0.5 of its size a letter, and 0.6 where it is in capitals, at most, as measured in Chromium. */
function tagSpan(tag: Shape): { left: number; right: number; top: number; bottom: number } {
  if (tag.kind !== "tag") throw new Error("no word");
  const { text, size, align, at } = tag;
  const width = size * (text.length * (text === text.toUpperCase() ? 0.6 : 0.5) + 0.44);
  const left = align === "left" ? at.x : align === "right" ? at.x - width : at.x - width / 2;
  return { left, right: left + width, top: at.y - 0.51 * size, bottom: at.y + 0.51 * size };
}

describe("D6 a place outside the view", () => {
  const sizes = [
    { width: 1000, height: 800 },
    { width: 360, height: 420 },
  ];
  const places = ["in-front", "target-side", "away-side"] as const;
  const words = {
    "farther out": { x: 0, y: -3 },
    "farther back": { x: 0, y: 4 },
    "to the target": { x: 3, y: 0.3 },
    "from the target": { x: -3, y: 0.3 },
  };

  test.each(places)("D6 %s: says which way it lies, whichever hand, and stays whole in the view", (place) => {
    for (const handed of ["right", "left"] as const) {
      for (const size of sizes) {
        const view = groundFrame({ x: 0, y: 0, ...size }, sceneLayout, handed, place);
        for (const [word, at] of Object.entries(words)) {
          const far = { shaft: null, place: { subject: "butt-point" as const, ...at, sdX: 0.02, sdY: 0.02 } };
          const drawn = drawLive(view, far, 40, 30);
          const tag = drawn.find((shape) => shape.kind === "tag");
          expect([word, word.split(" ").at(-1)]).toContain(tag?.text);
          const mark = drawn.find((shape) => shape.kind === "mark");
          expect(mark?.shape).toMatch(/^triangle-/);
          // The triangle points where the place lies.
          const there = view.toScreen(at.x, at.y);
          const way = { up: [0, -1], down: [0, 1], left: [-1, 0], right: [1, 0] }[mark?.shape.slice(9) ?? ""] ?? [0, 0];
          const [x = 0, y = 0] = way;
          expect((there.x - (mark?.centre.x ?? 0)) * x + (there.y - (mark?.centre.y ?? 0)) * y).toBeGreaterThan(0);
          const half = { width: (word.length * 0.42 * 30) / 2, height: 15 };
          expect(tag?.at.x).toBeGreaterThanOrEqual(half.width);
          expect(tag?.at.x).toBeLessThanOrEqual(size.width - half.width);
          expect(tag?.at.y).toBeGreaterThanOrEqual(half.height);
          expect(tag?.at.y).toBeLessThanOrEqual(size.height - half.height);
        }
      }
    }
  });

  test("D6 says it in one word where two have no room beside the triangle, so that no band's name is covered", () => {
    const view = groundFrame({ x: 0, y: 0, width: 250, height: 420 }, sceneLayout, "right", "in-front");
    const far = { shaft: null, place: { subject: "butt-point" as const, x: 0, y: -3, sdX: 0.02, sdY: 0.02 } };
    const drawn = drawLive(view, far, 40, 30);
    const mark = drawn.find((shape) => shape.kind === "mark");
    const tag = drawn.find((shape) => shape.kind === "tag");
    expect(tag).toMatchObject({ text: "out", at: { y: mark?.centre.y } });
  });

  test("D6 says it in one word where the view is narrower than three, so that it is read whole", () => {
    const view = groundFrame({ x: 0, y: 0, width: 378, height: 420 }, sceneLayout, "right", "in-front");
    for (const [x, word] of [
      [3, "ahead"],
      [-3, "behind"],
    ] as const) {
      const far = { shaft: null, place: { subject: "head-point" as const, x, y: 0.3, sdX: 0.02, sdY: 0.02 } };
      const tag = drawLive(view, far, 40, 60).find((shape) => shape.kind === "tag");
      expect(tag?.text).toBe(word);
      const half = (word.length * 0.44 * 60) / 2;
      expect(tag?.at.x).toBeGreaterThanOrEqual(half);
      expect(tag?.at.x).toBeLessThanOrEqual(378 - half);
    }
  });

  test.each(places)("D6 %s: the word covers neither FEEL nor WANT, and stays in the view", (place) => {
    for (const size of sizes) {
      const view = groundFrame({ x: 0, y: 0, ...size }, sceneLayout, "right", place);
      const text = 40;
      const aims = drawAimTags(view, { felt: back.felt, wanted: back.wanted, strength: 1 }, text);
      for (const x of [-3, 0, 3]) {
        for (let y = -1; y < 1; y += 0.02) {
          const far = { shaft: null, place: { subject: "butt-point" as const, x, y, sdX: 0.02, sdY: 0.02 } };
          const tags = clearOfTags(drawLive(view, far, 40, text), aims, view.area).filter(({ kind }) => kind === "tag");
          for (const tag of tags.map(tagSpan)) {
            expect(tag.top).toBeGreaterThanOrEqual(0);
            expect(tag.bottom).toBeLessThanOrEqual(size.height);
            for (const aim of aims.map(tagSpan)) {
              const apart =
                tag.bottom <= aim.top || aim.bottom <= tag.top || tag.right <= aim.left || aim.right <= tag.left;
              expect(apart, `${place} ${String(size.width)} at ${String(x)}, ${y.toFixed(2)}`).toBe(true);
            }
          }
        }
      }
    }
  });

  test("D6 a place inside the view needs no word", () => {
    const live = liveOnGround(seen, 50, "arm-level-back", metres(0.8));
    expect(drawLive(frame, live, 40, 30).some(({ kind }) => kind === "tag")).toBe(false);
  });
});

describe("D5 pattern and word beside the colour", () => {
  test("D5 felt is hatched and says FEEL, wanted is dotted and says WANT", () => {
    const aim = { felt: back.felt, wanted: back.wanted, strength: 1 };
    const patterns = drawAimBands(frame, aim, 40).flatMap((shape) =>
      shape.kind === "pattern" ? [[shape.paint, shape.pattern]] : [],
    );
    expect(patterns).toEqual([
      ["wanted", "dots"],
      ["felt", "hatch"],
    ]);
    const tags = drawAimTags(frame, aim, 40).flatMap((shape) =>
      shape.kind === "tag" ? [[shape.ground, shape.text]] : [],
    );
    expect(tags).toEqual([
      ["wanted", "WANT"],
      ["felt", "FEEL"],
    ]);
  });
});

test("D5 FEEL and WANT never cover each other, in a view that is narrower than both and wherever the bands lie", () => {
  for (const place of ["in-front", "target-side", "away-side"] as const) {
    const view = groundFrame({ x: 0, y: 0, width: 378, height: 700 }, sceneLayout, "right", place);
    for (let shift = -0.6; shift <= 0.6; shift += 0.05) {
      const wanted = { from: -0.05, to: 0.05 };
      const felt = { from: wanted.from + shift, to: wanted.to + shift };
      const [want, feel] = drawAimTags(view, { felt, wanted, strength: 1 }, 72).map(tagSpan);
      if (want === undefined || feel === undefined) continue;
      const apart =
        feel.bottom <= want.top || want.bottom <= feel.top || feel.right <= want.left || want.right <= feel.left;
      expect(apart, `${place}, felt ${shift.toFixed(2)} m from wanted`).toBe(true);
      expect(Math.min(feel.top, want.top)).toBeGreaterThanOrEqual(0);
      expect(Math.max(feel.bottom, want.bottom)).toBeLessThanOrEqual(700);
    }
  }
});

test("D5 FEEL and WANT leave the ball free where they can, and go no farther than the view's edge", () => {
  const text = 94;
  const onBall = { from: -0.05, to: 0.05 };
  const away = { from: 0.5, to: 0.6 };
  for (const width of [601, 700, 1000]) {
    const view = groundFrame({ x: 0, y: 0, width, height: 780 }, sceneLayout, "right", "in-front");
    const ball = view.toScreen(0, 0);
    const radius = 0.043 * view.pixelsPerMetre;
    const [want] = drawAimTags(view, { felt: away, wanted: onBall, strength: 1 }, text).map(tagSpan);
    const [, feel] = drawAimTags(view, { felt: onBall, wanted: away, strength: 1 }, text).map(tagSpan);
    expect(want?.left).toBeGreaterThan(ball.x + radius);
    expect(want?.right).toBeLessThanOrEqual(width);
    expect(feel?.right).toBeLessThan(ball.x - radius);
    expect(feel?.left).toBeGreaterThanOrEqual(0);
  }
});

describe("D7 the band to be felt fades", () => {
  const repsAt = (places: readonly number[]) =>
    places.map((y, index) => repOf(repIds[index % repIds.length] ?? repIds[0], 1000 * index, y, 0));

  test("D7 full without enough reps, gone when the wanted band is hit, back when it is missed again", () => {
    expect(targetStrength(back, repsAt([0, 0]))).toBe(1);
    expect(targetStrength(back, repsAt([0, 0, 0, 0, 0]))).toBe(0);
    expect(targetStrength(back, repsAt([0, 0, 0, 0, 0, 0.6, 0.6, 0.6, 0.6, 0.6]))).toBe(1);
  });

  test("D7 never stronger for a smaller miss", () => {
    const miss = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(miss, miss, (a, b) => {
        const [smaller, larger] = a <= b ? [a, b] : [b, a];
        const strengthAt = (y: number) => targetStrength(back, repsAt([y, y, y]));
        expect(strengthAt(smaller)).toBeLessThanOrEqual(strengthAt(larger));
      }),
    );
  });

  test("D7 a faded band keeps its border and drops pattern and word", () => {
    const faded = { felt: back.felt, wanted: back.wanted, strength: 0 };
    const kinds = drawAimBands(frame, faded, 40).filter((shape) => "paint" in shape && shape.paint === "felt");
    expect(kinds).toEqual([]);
    expect(drawAimBands(frame, faded, 40).filter(({ kind }) => kind === "frame")).toHaveLength(2);
    expect(drawAimTags(frame, faded, 40)).toHaveLength(1);
  });
});

describe("D9 what a rep leaves on the ground", () => {
  const told = checkpointTold(repIds[1], readingAt("arm-level-back", 5000, 0.2, sure("ball-to-toe")));
  const lastRep = repOf(repIds[0], 4000, 0.3, 0);
  const verdict = { repId: repIds[0], kind: "answer" as const, sentence: "", places: [] };

  test("D9 the finished rep's marks stay until the next rep leaves its first", () => {
    const practice = practiceState({ verdict });
    expect(repMarks({ practice, checkpoints: [], lastRep }).map(({ y }) => y)).toEqual([0.3, 0]);
    expect(repMarks({ practice, checkpoints: [told], lastRep }).map(({ y }) => y)).toEqual([0.2]);
  });

  test("D8 a silent rep leaves none, neither under way nor finished", () => {
    const silent = practiceState({ nextRepAnswered: false, verdict: null });
    expect(repMarks({ practice: silent, checkpoints: [told], lastRep })).toEqual([]);
    expect(repMarks({ practice: silent, checkpoints: [], lastRep })).toEqual([]);
    const quiet = practiceState({ view: "quiet", verdict });
    expect(repMarks({ practice: quiet, checkpoints: [told], lastRep })).toEqual([]);
  });

  test("D9 a checkpoint without an aim leaves none", () => {
    const practice = practiceState({ verdict, aims: [down] });
    expect(repMarks({ practice, checkpoints: [], lastRep }).map(({ checkpoint }) => checkpoint)).toEqual([
      "arm-level-down",
    ]);
  });
});
