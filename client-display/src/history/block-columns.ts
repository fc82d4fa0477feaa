import { checkpointIds, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { SessionView, StageId } from "@overcue/shared-geometry/wire/practice";

export type BlockFigure = "carryOver" | "spread" | "exaggerateBy";

/** Figures of the blocks as columns for a plot: block numbers from 1, then one column a checkpoint; null where there is none. */
export interface BlockColumns {
  readonly blocks: readonly number[];
  readonly checkpoints: readonly CheckpointId[];
  readonly columns: readonly (readonly (number | null)[])[];
}

/** Carry-over comes in percent, spread and cue in centimetres. */
const scales: Readonly<Record<BlockFigure, number>> = { carryOver: 100, spread: 100, exaggerateBy: 100 };

export function blockColumns(view: SessionView, figure: BlockFigure): BlockColumns {
  const checkpoints = checkpointIds.filter((id) =>
    view.blocks.some(({ places }) => places.some(({ checkpoint }) => checkpoint === id)),
  );
  return {
    blocks: view.blocks.map((_, index) => index + 1),
    checkpoints,
    columns: checkpoints.map((id) =>
      view.blocks.map(({ places }) => {
        const value = places.find(({ checkpoint }) => checkpoint === id)?.[figure] ?? null;
        return value === null ? null : value * scales[figure];
      }),
    ),
  };
}

export interface StageRun {
  readonly stage: StageId;
  readonly firstBlock: number;
  readonly lastBlock: number;
}

/** The stages in the order practised, each with its blocks; a stage that comes back is a run of its own. */
export function stageRuns(view: SessionView): readonly StageRun[] {
  const runs: StageRun[] = [];
  for (const [index, { stage }] of view.blocks.entries()) {
    const last = runs.at(-1);
    if (last?.stage === stage) runs[runs.length - 1] = { ...last, lastBlock: index + 1 };
    else runs.push({ stage, firstBlock: index + 1, lastBlock: index + 1 });
  }
  return runs;
}
