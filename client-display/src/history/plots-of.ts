import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { SessionView } from "@overcue/shared-geometry/wire/practice";
import type { Colours } from "../ground-view/painter.ts";
import { shortCheckpoint } from "../words/heading.ts";
import { blockColumns, type BlockFigure } from "./block-columns.ts";
import type { PlotProps, PlotSeries } from "./plot.tsx";

type PlotContent = Omit<PlotProps, "fontSize" | "height">;

const dashes: readonly (readonly number[])[] = [[], [8, 5], [2, 5], [12, 4, 2, 4], [5, 2]];

function seriesFor(checkpoints: readonly CheckpointId[], colours: Colours): readonly PlotSeries[] {
  const accents = [colours.live, colours.wantedLine, colours.good, colours.off, colours.ink];
  return checkpoints.map((id, index) => ({
    label: shortCheckpoint[id],
    colour: accents[index % accents.length] ?? colours.ink,
    dash: dashes[index % dashes.length] ?? [],
    line: true,
  }));
}

const figures: readonly { readonly figure: BlockFigure; readonly title: string; readonly unit: string }[] = [
  { figure: "carryOver", title: "Carry-over: how much of the wanted change arrived", unit: "%" },
  { figure: "spread", title: "Spread within a block", unit: "cm" },
  { figure: "exaggerateBy", title: "Exaggerate by (beyond the ball is minus)", unit: "cm" },
];

/** The plots of a session by block. */
export function blockPlots(view: SessionView, colours: Colours): readonly PlotContent[] {
  return figures.map(({ figure, title, unit }) => {
    const { blocks, checkpoints, columns } = blockColumns(view, figure);
    const last = checkpoints.map((id, index) => {
      const value = columns[index]?.at(-1) ?? null;
      return `${shortCheckpoint[id]} ${value === null ? "none" : `${Math.round(value)} ${unit}`}`;
    });
    return {
      title,
      summary: `${title} over ${blocks.length} blocks. In the last one: ${last.join(", ")}.`,
      data: [[...blocks], ...columns.map((column) => [...column])],
      series: seriesFor(checkpoints, colours),
      xLabel: "block",
      yLabel: unit,
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
    title: "Felt against measured (dots on the line: felt as it was)",
    summary: `Felt against measured for ${dots.length} answers, on average ${Math.round(gap)} cm apart.`,
    data: [felt, felt, dots.map(([, y]) => y)],
    series: [
      { label: "felt = measured", colour: colours.quiet, dash: [6, 5], line: true },
      { label: "a rep", colour: colours.live, dash: [], line: false },
    ],
    xLabel: "felt, cm",
    yLabel: "cm",
    wholeX: false,
    colours,
  };
}
