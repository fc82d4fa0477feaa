import { useRef, type PointerEvent } from "react";
import { useStore } from "zustand";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { StationLine } from "@overcue/shared-geometry/station";
import { stickEndNames } from "@overcue/shared-geometry/stick-in-image";
import type { StationSetUp } from "./station-set-up.ts";
import type { MarkedBall, MarkedStick, MarkName } from "./station-store.ts";
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
  const held = useRef<Held | null>(null);
  const marks = marksOf(sticks, ball);

  const placeOf = (event: PointerEvent<HTMLElement>): Point<"image"> => {
    const box = event.currentTarget.getBoundingClientRect();
    return imagePoint(
      ((event.clientX - box.left) / box.width) * width,
      ((event.clientY - box.top) / box.height) * height,
    );
  };
  const take = (event: PointerEvent<HTMLElement>): void => {
    if (!(event.target instanceof Element) || event.target.closest(".handle") === null) return;
    const at = placeOf(event);
    // Handles of marks that lie close together cover each other: the mark that is nearest to the thumb is meant.
    const off = (mark: Mark): number => Math.hypot(mark.at.x - at.x, mark.at.y - at.y);
    const [first, ...others] = marks;
    if (first === undefined) return;
    const taken = others.reduce((nearest, mark) => (off(mark) < off(nearest) ? mark : nearest), first);
    // The browser would give the focus to the handle on top.
    event.preventDefault();
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.querySelector<HTMLElement>(`.handle[aria-label="${taken.label}"]`)?.focus();
    held.current = { name: taken.name, byX: taken.at.x - at.x, byY: taken.at.y - at.y };
    setUp.drag(taken.name, taken.at);
  };
  const letGo = (): void => {
    if (held.current === null) return;
    held.current = null;
    void setUp.drop();
  };

  return (
    <div
      className="marks"
      onPointerDown={take}
      onPointerMove={(event) => {
        if (held.current === null) return;
        const { name, byX, byY } = held.current;
        const at = placeOf(event);
        setUp.drag(name, imagePoint(at.x + byX, at.y + byY));
      }}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <svg viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
        {sticks.map(({ stick: { line, near, far }, placed }) => (
          <g key={line} className={`stick ${placed}`} data-line={line}>
            <line x1={near.at.x} y1={near.at.y} x2={far.at.x} y2={far.at.y} className="edge" />
            <line x1={near.at.x} y1={near.at.y} x2={far.at.x} y2={far.at.y} className="core" />
          </g>
        ))}
      </svg>
      {marks.map((mark) => (
        <Handle key={mark.label} setUp={setUp} mark={mark} width={width} height={height} />
      ))}
    </div>
  );
}

interface Mark {
  readonly name: MarkName;
  readonly at: Point<"image">;
  readonly label: string;
  readonly letter: string;
}

/** The mark under the thumb, and how far it lies from the thumb's middle, pixels. */
interface Held {
  readonly name: MarkName;
  readonly byX: number;
  readonly byY: number;
}

const letters: Readonly<Record<StationLine, string>> = { "ball-line": "B", "toe-line": "T", "heel-line": "H" };

function marksOf(sticks: readonly MarkedStick[], ball: MarkedBall | null): readonly Mark[] {
  const ends = sticks.flatMap(({ stick }) =>
    stickEndNames.map((end): Mark => {
      const { line } = stick;
      return { name: { line, end }, at: stick[end].at, label: `${lineNames[line]}, ${end} end`, letter: letters[line] };
    }),
  );
  return ball === null ? ends : [...ends, { name: "ball", at: ball.at, label: "ball, its middle", letter: "Ball" }];
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function Handle({ setUp, mark: { name, at, label, letter }, width, height }: Props & { readonly mark: Mark }) {
  return (
    <button
      type="button"
      className="handle"
      data-end={name === "ball" ? "near" : name.end}
      aria-label={label}
      style={{ left: `${(100 * at.x) / width}%`, top: `${(100 * at.y) / height}%` }}
      onKeyDown={(event) => {
        const step = steps[event.key];
        if (step === undefined) return;
        event.preventDefault();
        const by = event.shiftKey ? 10 : 1;
        setUp.drag(name, imagePoint(at.x + by * step[0], at.y + by * step[1]));
      }}
      onKeyUp={(event) => {
        if (event.key in steps) void setUp.drop();
      }}
    >
      <span aria-hidden="true">{letter}</span>
    </button>
  );
}
