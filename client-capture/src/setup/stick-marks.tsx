import { useStore } from "zustand";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StationLine } from "@overcue/shared-geometry/station";
import type { StationSetUp } from "./station-set-up.ts";
import type { MarkName } from "./station-store.ts";
import { lineNames } from "./station-words.ts";

interface Props {
  readonly setUp: StationSetUp;
  readonly width: number;
  readonly height: number;
}

/** A line over each stick and a handle at each end and on the ball, dragged by thumb or moved by the arrow keys, a pixel at a time (ten with shift). */
export function StickMarks({ setUp, width, height }: Props) {
  const sticks = useStore(setUp.store, (state) => state.sticks);
  const ball = useStore(setUp.store, (state) => state.ball);
  return (
    <div className="marks">
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {sticks.map(({ stick: { line, near, far }, placed }) => (
          <g key={line} className={`stick ${placed}`} data-line={line}>
            <line x1={near.at.x} y1={near.at.y} x2={far.at.x} y2={far.at.y} className="edge" />
            <line x1={near.at.x} y1={near.at.y} x2={far.at.x} y2={far.at.y} className="core" />
          </g>
        ))}
      </svg>
      {sticks.map(({ stick: { line, near, far } }) => (
        <div key={line}>
          <Handle setUp={setUp} mark={{ line, end: "near" }} at={near.at} width={width} height={height} />
          <Handle setUp={setUp} mark={{ line, end: "far" }} at={far.at} width={width} height={height} />
        </div>
      ))}
      {ball !== null && <Handle setUp={setUp} mark="ball" at={ball.at} width={width} height={height} />}
    </div>
  );
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const letters: Readonly<Record<StationLine, string>> = { "ball-line": "B", "toe-line": "T", "heel-line": "H" };

function Handle({ setUp, mark, at, width, height }: Props & { readonly mark: MarkName; readonly at: Point<"image"> }) {
  const [name, place, letter] =
    mark === "ball"
      ? ["ball, its middle", "ball", "Ball"]
      : [`${lineNames[mark.line]}, ${mark.end} end`, mark.line, letters[mark.line]];
  const placeOf = (event: React.PointerEvent<HTMLElement>): Point<"image"> => {
    const box = event.currentTarget.closest(".marks")?.getBoundingClientRect();
    if (box === undefined) return at;
    return imagePoint(
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    );
  };
  return (
    <button
      type="button"
      className={`handle handle-${place}`}
      data-end={mark === "ball" ? "near" : mark.end}
      aria-label={name}
      style={{ left: `${(100 * at.x) / width}%`, top: `${(100 * at.y) / height}%` }}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        setUp.drag(mark, at);
      }}
      onPointerMove={(event) => {
        if (event.currentTarget.hasPointerCapture(event.pointerId)) setUp.drag(mark, placeOf(event));
      }}
      onPointerUp={() => void setUp.drop()}
      onPointerCancel={() => void setUp.drop()}
      onKeyDown={(event) => {
        const step = steps[event.key];
        if (step === undefined) return;
        event.preventDefault();
        const by = event.shiftKey ? 10 : 1;
        setUp.drag(mark, imagePoint(at.x + by * step[0], at.y + by * step[1]));
      }}
      onKeyUp={(event) => {
        if (event.key in steps) void setUp.drop();
      }}
    >
      <span aria-hidden="true">{letter}</span>
    </button>
  );
}
