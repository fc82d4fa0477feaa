import { bandIds } from "@overcue/shared-geometry/bands";
import { decidedWord, sameWord } from "@overcue/client-display/words/key-word";
import { apart, noWordYet, settle, steadyWord } from "@overcue/client-display/words/steady-word";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const words = bandIds.map((band) => decidedWord({ decided: true, band, odds: 0.9 }));
const wordAt = (index: number) => {
  const word = words[index];
  if (word === undefined) throw new Error("no such band");
  return word;
};
/** Steps of a run: milliseconds since the step before, and which band is true. */
const run = fc.array(fc.tuple(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 0, max: words.length - 1 })), {
  minLength: 1,
  maxLength: 200,
});

describe("D2 the big word", () => {
  test("D2 never stands while it is not true", () => {
    fc.assert(
      fc.property(run, (steps) => {
        let state = noWordYet;
        let now = 0;
        for (const [wait, index] of steps) {
          now += wait;
          state = steadyWord(state, wordAt(index), now);
          expect(state.shown === null || sameWord(state.shown, wordAt(index))).toBe(true);
        }
      }),
    );
  });

  test("D2 comes at most 2.5 times a second, under the three flashes a second of WCAG 2.2, 2.3.1", () => {
    fc.assert(
      fc.property(run, (steps) => {
        let state = noWordYet;
        let now = 0;
        const came: number[] = [];
        for (const [wait, index] of steps) {
          now += wait;
          const before = state.shownAt;
          state = steadyWord(state, wordAt(index), now);
          if (state.shownAt !== before) came.push(now);
        }
        const gaps = came.slice(1).map((time, index) => time - (came[index] ?? time));
        expect(Math.min(Infinity, ...gaps)).toBeGreaterThanOrEqual(apart);
      }),
    );
  });

  test("D2 comes once it has stood long enough, and stays", () => {
    const word = wordAt(0);
    let state = steadyWord(noWordYet, word, 0);
    expect(state.shown).toBeNull();
    state = steadyWord(state, word, settle - 1);
    expect(state.shown).toBeNull();
    state = steadyWord(state, word, settle);
    expect(state.shown).toEqual(word);
    expect(steadyWord(state, word, 10_000).shownAt).toBe(settle);
  });

  test("D2 an undecided band names both candidates and is never a sure word", () => {
    const word = decidedWord({ decided: false, candidates: ["toe-line", "ball-to-toe"], odds: [0.5, 0.45] });
    expect(word.kind).toBe("unsure");
    expect(word.lines).toEqual(["unsure:", "toe line", "or ball to toes"]);
  });
});
