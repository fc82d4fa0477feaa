import { arms, armIds, type ArmId } from "./arms.ts";
import { drawGolfer } from "./draw-golfer.ts";
import { practise, type Course } from "./practise.ts";
import type { Reading } from "./two-rate-learner.ts";

/** What an arm came to over all golfers. Shares are of golfers. */
export interface ArmFigures {
  readonly arm: ArmId;
  /** Share whose carry-over, as the book has it, was 80 % in some block of the twelve. */
  readonly reached: number;
  /** Median of the first such block, from 1; Infinity where half never got there. */
  readonly medianBlocks: number;
  /** Share that went over 150 % in some block: as the book has it, and as it really was. */
  readonly overshot: number;
  readonly trulyOvershot: number;
  /** Share that got there in fewer blocks than under fixed gain 2 (never counts as more than twelve). */
  readonly fasterThanFixedGain: number;
  /** The same among the golfers who got there under both; null where there are none. */
  readonly fasterAmongBoth: number | null;
  /** Median carry-over in the next day's test without feedback. */
  readonly nextDay: number;
}

/** Other golfers (seeds up to 10,500) were used while step and aim were chosen. */
const firstSeed = 20_001;

/** Takes so many golfers through every arm. The same golfer makes the same scatter in each. */
export function compareArms(count: number, reading: Reading): readonly ArmFigures[] {
  const seeds = Array.from({ length: count }, (_, index) => firstSeed + index);
  const courses = (arm: ArmId): readonly Course[] =>
    seeds.map((seed) => practise(drawGolfer(seed), arms[arm], reading));
  const fixed = courses("fixedGain");
  return armIds.map((arm) => figuresOf(arm, arm === "fixedGain" ? fixed : courses(arm), fixed));
}

/** The first block, from 1, with 80 % or more; Infinity for never. */
function blocksToReach({ carryOver }: Course): number {
  const index = carryOver.findIndex((value) => value >= 0.8);
  return index < 0 ? Infinity : index + 1;
}

function figuresOf(arm: ArmId, courses: readonly Course[], fixed: readonly Course[]): ArmFigures {
  const pairs = courses.map((course, index) => {
    const other = fixed[index];
    return { blocks: blocksToReach(course), fixedBlocks: other ? blocksToReach(other) : Infinity };
  });
  const both = pairs.filter(({ blocks, fixedBlocks }) => Number.isFinite(blocks) && Number.isFinite(fixedBlocks));
  const isFaster = (pair: { blocks: number; fixedBlocks: number }): boolean => pair.blocks < pair.fixedBlocks;
  return {
    arm,
    reached: shareOf(pairs, ({ blocks }) => Number.isFinite(blocks)),
    medianBlocks: medianOf(pairs.map(({ blocks }) => blocks)),
    overshot: shareOf(courses, ({ carryOver }) => carryOver.some((value) => value > 1.5)),
    trulyOvershot: shareOf(courses, ({ trueCarryOver }) => trueCarryOver.some((value) => value > 1.5)),
    fasterThanFixedGain: shareOf(pairs, isFaster),
    fasterAmongBoth: both.length > 0 ? shareOf(both, isFaster) : null,
    nextDay: medianOf(courses.map(({ nextDay }) => nextDay)),
  };
}

function shareOf<T>(items: readonly T[], holds: (item: T) => boolean): number {
  return items.filter(holds).length / items.length;
}

/** The upper of the two middle values where there are two. */
function medianOf(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
