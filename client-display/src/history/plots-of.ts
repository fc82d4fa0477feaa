import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { SessionView } from "@overcue/shared-geometry/wire/practice";
import type { Colours } from "../ground-view/painter.ts";
import { briefCheckpoint } from "../words/heading.ts";
import { blockColumns, type BlockFigure } from "./block-columns.ts";
import type { PlotProps, PlotSeries } from "./plot.tsx";

export type PlotContent = Omit<PlotProps, "fontSize" | "height">;

const dashes: readonly (readonly number[])[] = [[], [8, 5], [2, 5], [12, 4, 2, 4], [5, 2]];

function seriesFor(
  checkpoints: readonly CheckpointId[],
  last: readonly (number | null)[],
  unit: string,
  colours: Colours,
): readonly PlotSeries[] {
  const accents = [colours.plotWarm, colours.plotCool, colours.ink, colours.quiet, colours.plotWarm];
  return checkpoints.map((id, index) => ({
    label: `${briefCheckpoint(id)} ${figureOf(last[index] ?? null, unit)}`,
    colour: accents[index % accents.length] ?? colours.ink,
    dash: dashes[index % dashes.length] ?? [],
    line: true,
  }));
}

/** "82 %", "-35 cm", or "none" where nothing was measured. */
const figureOf = (value: number | null, unit: string): string =>
  value === null ? "none" : `${Math.round(value)} ${unit}`;

const figures: readonly {
  readonly figure: BlockFigure;
  readonly title: string;
  readonly meaning: string;
  readonly unit: string;
}[] = [
  { figure: "carryOver", title: "Carry-over", meaning: "how much of the wanted change arrived", unit: "%" },
  { figure: "spread", title: "Spread", meaning: "within a block", unit: "cm" },
  { figure: "exaggerateBy", title: "Exaggerate by", meaning: "minus is beyond the ball", unit: "cm" },
];

/** The plots of a session by block; each series has the last block's figure in its name. */
export function blockPlots(view: SessionView, colours: Colours): readonly PlotContent[] {
  return figures.map(({ figure, title, meaning, unit }) => {
    const { blocks, checkpoints, columns } = blockColumns(view, figure);
    const last = columns.map((column) => column.at(-1) ?? null);
    const inWords = checkpoints.map((id, index) => `${briefCheckpoint(id)} ${figureOf(last[index] ?? null, unit)}`);
    return {
      title: `${title}, ${unit} by block`,
      summary: `${title}, ${meaning}, over ${blocks.length} blocks. In the last one: ${inWords.join(", ")}.`,
      data: [[...blocks], ...columns.map((column) => [...column])],
      series: seriesFor(checkpoints, last, unit, colours),
      wholeX: true,
      colours,
    };
  });
}

/** Felt against measured, one dot a rep; the line is where they agree. Null where nothing was asked yet. */
export function feltPlot(view: SessionView, colours: Colours): PlotContent | null {
  if (view.feltGaps.length === 0) return null;
  const dots = view.feltGaps
    .map(({ felt, measured }) => [felt * 100, measured * 100] as const)
    .toSorted((a, b) => a[0] - b[0]);
  const gap = dots.reduce((sum, [felt, measured]) => sum + Math.abs(felt - measured), 0) / dots.length;
  const felt = dots.map(([x]) => x);
  return {
    title: "Measured over felt, cm",
    summary: `Felt against measured for ${dots.length} answers, on average ${Math.round(gap)} cm apart.`,
    data: [felt, felt, dots.map(([, y]) => y)],
    series: [
      { label: "felt as it was", colour: colours.quiet, dash: [6, 5], line: true },
      { label: `a rep: ${Math.round(gap)} cm off`, colour: colours.plotWarm, dash: [], line: false },
    ],
    wholeX: false,
    colours,
  };
}
