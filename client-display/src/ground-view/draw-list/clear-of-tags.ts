import { tagHeight, tagPadding, type DrawList, type Rect, type Shape } from "./shapes.ts";

type Tag = Extract<Shape, { kind: "tag" }>;

/**
 * The same shapes, with every word that would cover one of the `taken` words moved up or down past it, whichever is nearer and inside of `area`.
 */
export function clearOfTags(shapes: DrawList, taken: DrawList, area: Rect): DrawList {
  const boxes = taken.flatMap((shape) => (shape.kind === "tag" ? [boxOf(shape)] : []));
  return shapes.map((shape) => (shape.kind === "tag" ? movedClear(shape, boxes, area) : shape));
}

function movedClear(tag: Tag, taken: readonly Rect[], area: Rect): Tag {
  const box = boxOf(tag);
  const covered = taken.filter((other) => overlap(box, other));
  if (covered.length === 0) return tag;
  const gap = tag.size * 0.15;
  const places = covered
    .flatMap((other) => [other.y - gap - box.height / 2, other.y + other.height + gap + box.height / 2])
    .filter((y) => y - box.height / 2 >= area.y && y + box.height / 2 <= area.y + area.height)
    .filter((y) => !taken.some((other) => overlap({ ...box, y: y - box.height / 2 }, other)))
    .toSorted((a, b) => Math.abs(a - tag.at.y) - Math.abs(b - tag.at.y));
  return { ...tag, at: { x: tag.at.x, y: places[0] ?? tag.at.y } };
}

/** The bold typeface's greatest mean advance over these words in font sizes, in capitals and not, as measured in Chromium. */
const advance = { capitals: 0.6, small: 0.5 };

/** A tag's box as it will be painted, or a little more. */
export function boxOf({ text, size, align, at }: Tag): Rect {
  const each = text === text.toUpperCase() ? advance.capitals : advance.small;
  const width = size * (text.length * each + 2 * tagPadding);
  const height = size * tagHeight;
  const left = align === "left" ? at.x : align === "right" ? at.x - width : at.x - width / 2;
  return { x: left, y: at.y - height / 2, width, height };
}

const overlap = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
