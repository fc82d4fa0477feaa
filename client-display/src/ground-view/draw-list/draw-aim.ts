import type { GroundInterval } from "@overcue/shared-geometry/wire/practice";
import { boxOf, clearOfTags } from "./clear-of-tags.ts";
import { ballRadius } from "./draw-ground.ts";
import { stripOf, type GroundFrame } from "./ground-frame.ts";
import { tagHeight, type DrawList, type PatternName, type Paint, type Rect, type Shape } from "./shapes.ts";
import { within } from "./within.ts";

export interface AimOnGround {
  readonly felt: GroundInterval;
  readonly wanted: GroundInterval;
  /** How strongly the felt band is drawn: 1 while the golfer needs it, towards 0 as the error falls. */
  readonly strength: number;
}

/** What is kept free about the ball, pixels. */
const ballHalo = 4;

/** Under this strength the felt band keeps its border only. */
const borderOnly = 0.15;

/** The band to be felt is hatched, the band wanted in reality is dotted with a broken border. */
export function drawAimBands(frame: GroundFrame, { felt, wanted, strength }: AimOnGround, textSize: number): DrawList {
  const wantedStrip = stripOf(frame, wanted.from, wanted.to);
  const feltStrip = stripOf(frame, felt.from, felt.to);
  return [
    ...(wantedStrip === null ? [] : band(wantedStrip, "dots", "wanted", 1, textSize)),
    ...(feltStrip === null ? [] : band(feltStrip, "hatch", "felt", strength, textSize)),
  ];
}

/** Each aim's word at one end of its band. */
export function drawAimTags(frame: GroundFrame, { felt, wanted, strength }: AimOnGround, textSize: number): DrawList {
  const wantedStrip = stripOf(frame, wanted.from, wanted.to);
  const feltStrip = strength > borderOnly ? stripOf(frame, felt.from, felt.to) : null;
  const want = wantedStrip === null ? [] : [tag(frame, wantedStrip, "WANT", "end", textSize, "wanted")];
  const feel = feltStrip === null ? [] : [tag(frame, feltStrip, "FEEL", "start", textSize, "felt")];
  return [...want, ...clearOfTags(feel, want, frame.area)];
}

function band(rect: Rect, pattern: PatternName, paint: Paint, strength: number, textSize: number): readonly Shape[] {
  const border = Math.max(2, textSize / 18);
  const filled: readonly Shape[] =
    strength > borderOnly ? [{ kind: "pattern", rect, pattern, paint, scale: textSize / 4, alpha: strength }] : [];
  return [
    ...filled,
    {
      kind: "frame",
      rect,
      paint: "ink",
      width: border,
      dash: pattern === "dots" ? [border * 3, border * 2] : [],
      // The border stays when the band has faded, and is read in the sun like any other line.
      alpha: 1,
    },
  ];
}

/** FEEL sits at the left or top end of its band, WANT at the other, so that neighbours never cover each other; nearer to the edge than usual where it would cover the ball. */
function tag(frame: GroundFrame, strip: Rect, text: string, end: "start" | "end", size: number, ground: Paint): Shape {
  const gap = size * 0.3;
  const half = (size * tagHeight) / 2;
  // Whole in the view, though of its band there may be no more than an edge.
  const middle = {
    x: strip.x + strip.width / 2,
    y: within(strip.y + strip.height / 2, frame.area.y + half, frame.area.y + frame.area.height - half),
  };
  if (frame.bands === "rows") {
    const align = end === "start" ? "left" : "right";
    const at = { x: end === "start" ? strip.x + gap : strip.x + strip.width - gap, y: middle.y };
    const usual = { kind: "tag", text, at, align, size, ink: "ink", ground, alpha: 1 } as const;
    const over = Math.min(gap, overBall(frame, boxOf(usual), end));
    return { ...usual, at: { ...at, x: end === "start" ? at.x - over : at.x + over } };
  }
  const y = end === "start" ? strip.y + gap + size * 0.6 : strip.y + strip.height - gap - size * 0.6;
  return { kind: "tag", text, at: { x: middle.x, y }, align: "centre", size, ink: "ink", ground, alpha: 1 };
}

/** How far a box at one end of a row reaches over the ball, pixels; 0 where it leaves it free. */
function overBall(frame: GroundFrame, box: Rect, end: "start" | "end"): number {
  const ball = frame.toScreen(0, 0);
  const radius = ballRadius * frame.pixelsPerMetre + ballHalo;
  if (box.y > ball.y + radius || box.y + box.height < ball.y - radius) return 0;
  return Math.max(0, end === "start" ? box.x + box.width - (ball.x - radius) : ball.x + radius - box.x);
}
