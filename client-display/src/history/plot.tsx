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
  readonly wholeX: boolean;
  readonly colours: Colours;
  /** CSS pixels: lines and points grow with it. */
  readonly fontSize: number;
  /** Of the picture without title and key, CSS pixels. */
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

function optionsOf({ series, wholeX, colours, fontSize, height }: PlotProps, width: number): uPlot.Options {
  const font = `500 ${fontSize}px "Barlow Semi Condensed", sans-serif`;
  const lineWidth = Math.max(3, fontSize / 12);
  const axis: uPlot.Axis = {
    stroke: colours.ink,
    font,
    gap: fontSize / 6,
    grid: { stroke: colours.strip, width: Math.max(1, lineWidth / 3) },
    ticks: { show: false },
  };
  return {
    width,
    height,
    // The highest number stands half above its line.
    padding: [fontSize / 2, null, null, null],
    legend: { show: false },
    cursor: { show: false },
    scales: { x: { time: false, range: (_plot, low, high) => [low - 0.4, high + 0.4] } },
    axes: [
      { ...axis, size: fontSize * 1.3, space: fontSize * 2, ...(wholeX ? { incrs: [1, 2, 5, 10, 20, 50] } : {}) },
      { ...axis, size: fontSize * 1.9, space: fontSize * 1.4 },
    ],
    series: [
      {},
      ...series.map(({ label, colour, dash, line }): uPlot.Series => ({
        label,
        stroke: colour,
        width: line ? lineWidth : 0,
        dash: dash.map((length) => (length * lineWidth) / 3),
        spanGaps: true,
        ...(line ? {} : { paths: () => null }),
        points: {
          show: true,
          size: lineWidth * 3,
          width: lineWidth * 0.7,
          stroke: colour,
          fill: dash.length === 0 ? colour : colours.paper,
        },
      })),
    ],
  };
}
