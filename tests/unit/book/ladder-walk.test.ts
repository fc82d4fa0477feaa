import { describe, expect, it } from "vitest";
import { stageIds } from "@overcue/shared-geometry/wire/practice";
import { flatToSteepGolfer, type GolferModel } from "../../fakes/golfer-model.ts";
import { seededRandom } from "../../scenes/random.ts";
import { makeReps, temporaryBook } from "./temporary-book.ts";

/** Practises until the ball stage is passed once or so many reps are made; answers the stages in the order in which they were seen. */
async function climb(golfer: GolferModel, most: number) {
  const { book, clock } = temporaryBook();
  const seen: string[] = [];
  for (let rep = 0; rep < most; rep++) {
    const { mode, stage, proposals } = book.state();
    const rung = mode === "practice" ? stage : mode;
    if (seen.at(-1) !== rung) seen.push(rung);
    if (proposals.length > 0) book.command({ do: "accept-proposal" }, "Coach");
    await makeReps(book, clock, 1, golfer);
    if (book.sessionView().blocks.some((block) => block.stage === "ball" && block.passed)) break;
  }
  return { seen, state: book.state(), blocks: book.sessionView().blocks };
}

describe("the ladder", () => {
  it.each([0.25, 0.5, 0.8])(
    "P33 is climbed from the baseline to the ball by a golfer whose carry-over is %d",
    async (carryOver) => {
      const golfer = { ...flatToSteepGolfer, carryOver, scatter: 0.02, random: seededRandom(7) };
      const { seen, state, blocks } = await climb(golfer, 150);
      expect(seen).toEqual(["baseline", ...stageIds]);
      expect(blocks.at(-1)).toMatchObject({ stage: "ball", passed: true });
      expect(state.pattern.name).toBe("flat-to-steep");
      const reached = blocks.at(-1)?.places.filter(({ checkpoint }) => checkpoint.startsWith("arm-level"));
      expect(reached?.map(({ checkpoint }) => checkpoint)).toEqual(["arm-level-back", "arm-level-down"]);
      for (const place of reached ?? []) {
        expect(place.carryOver).toBeGreaterThan(0.7);
        expect(place.carryOver).toBeLessThan(1.5);
      }
    },
  );

  it("P33 is not climbed by a golfer whom no cue moves", async () => {
    const { seen, state } = await climb({ ...flatToSteepGolfer, carryOver: 0 }, 60);
    expect(seen).toEqual(["baseline", "slow-rehearsal"]);
    expect(state.stage).toBe("slow-rehearsal");
  });
});
