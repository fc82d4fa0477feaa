import { useEffect, useRef } from "react";
import uPlot from "uplot";
import type { Colours } from "../ground-view/painter.ts";

/** A line or a cloud: lines tell their series apart by dash and by the point's fill as well as by colour. */
export interface PlotProps {
  readonly title: string;
  /** What the picture shows, in a sentence, for who cannot see it. */
  readonly summary: string;
  readonly data: uPlot.AlignedData;
  readonly series: readonly PlotSeries[];
  readonly xLabel: string;
  readonly yLabel: string;
  readonly wholeX: boolean;
  readonly colours: Colours;
  readonly fontSize: number;
  readonly height: number;
}

export interface PlotSeries {
  readonly label: string;
  readonly colour: string;
  readonly dash: readonly number[];
  readonly line: boolean;
}

export function Plot(props: PlotProps) {
  const { title, summary, series } = props;
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const element = host.current;
    if (element === null) return;
    const plot = new uPlot(optionsOf(props, element.clientWidth), props.data, element);
    const observer = new ResizeObserver(() => {
      plot.setSize({ width: element.clientWidth, height: props.height });
    });
    observer.observe(element);
    return () => {
      observer.disconnect();
      plot.destroy();
    };
  }, [props]);
  return (
    <figure className="plot">
      <figcaption>{title}</figcaption>
      <div ref={host} role="img" aria-label={summary} />
      <ul className="plot-key" aria-hidden="true">
        {series.map(({ label, colour, dash, line }) => (
          <li key={label}>
            <svg viewBox="0 0 40 12">
              {line && <path d="M0 6H40" stroke={colour} strokeWidth="3" strokeDasharray={dash.join(" ")} />}
              <circle
                cx="20"
                cy="6"
                r="4.5"
                fill={dash.length === 0 ? colour : props.colours.paper}
                stroke={colour}
                strokeWidth="2"
              />
            </svg>
            {label}
          </li>
        ))}
      </ul>
    </figure>
  );
}

function optionsOf(
  { series, xLabel, yLabel, wholeX, colours, fontSize, height }: PlotProps,
  width: number,
): uPlot.Options {
  const font = `500 ${fontSize}px "Barlow Semi Condensed", sans-serif`;
  const axis: uPlot.Axis = {
    stroke: colours.ink,
    font,
    labelFont: font,
    labelSize: fontSize * 1.5,
    grid: { stroke: colours.strip, width: 1 },
    ticks: { stroke: colours.strip, width: 1 },
  };
  return {
    width,
    height,
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false, range: (_plot, low, high) => [low - 0.4, high + 0.4] } },
    axes: [
      { ...axis, label: xLabel, size: fontSize * 2, ...(wholeX ? { incrs: [1, 2, 5, 10, 20, 50] } : {}) },
      { ...axis, label: yLabel, size: fontSize * 3.2 },
    ],
    series: [
      {},
      ...series.map(({ label, colour, dash, line }): uPlot.Series => ({
        label,
        stroke: colour,
        width: line ? 3 : 0,
        dash: [...dash],
        spanGaps: true,
        ...(line ? {} : { paths: () => null }),
        points: { show: true, size: 9, width: 2, stroke: colour, fill: dash.length === 0 ? colour : colours.paper },
      })),
    ],
  };
}
