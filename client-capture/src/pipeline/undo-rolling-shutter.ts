import { wrapAngle } from "@overcue/shared-geometry/angle";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import { imagePoint, type Point } from "@overcue/shared-geometry/point";
import type { ReadingWay, RollingShutter } from "@overcue/shared-geometry/rolling-shutter";
import { milliseconds, radians } from "@overcue/shared-geometry/units";

/** Pixels a second in the picture. */
export interface GripRate {
  readonly x: number;
  readonly y: number;
}

/** What is known of a picture's reading. */
export interface PictureReading {
  /** Null: not known. */
  readonly shutter: RollingShutter | null;
  readonly width: number;
  readonly height: number;
  /** Milliseconds to the picture before: no reading takes longer. */
  readonly interval: number;
}

type Tracked = Extract<ShaftInImage, { status: "tracked" }>;

/** What is read takes between these times where nobody knows, milliseconds (phones of 2011 to 2018: kalibr's table of rolling shutters). */
const usualTime = { least: 7, most: 31 };
/** Share of the picture's height that a shaft without an end in sight is taken to span. */
const usualReach = 0.4;
/** How well the turn that is undone is known, as a share of it: the shaft's rate, the hands' and the reading's own time are estimates. */
const turnShare = 0.25;

/**
 * The shaft as a picture read all at once, at the time of its middle line, would show it. Line by line the picture shows each place of a moving shaft at
 * another time: grip and head are carried to one instant by the hands' rate and the shaft's turn. What that turned the shaft by is undone as far as it is
 * known, and widens the error: by a share where the camera's reading is known, by all of it where it is not, or where no end tells how far the shaft reaches.
 */
export function undoRollingShutter(seen: ShaftInImage, grip: GripRate, picture: PictureReading): ShaftInImage {
  const { shutter } = picture;
  if (seen.status !== "tracked" || shutter?.time === 0) return seen;
  if (shutter === null) {
    const time = milliseconds(usualRoot(picture.interval));
    const turns = (["down", "right"] as const).map((towards) => carry(seen, grip, picture, { time, towards }).turn);
    return widened(seen, Math.hypot(...turns) / Math.SQRT2);
  }
  const { turn, ...carried } = carry(seen, grip, picture, shutter);
  if (seen.head === null) return widened(seen, Math.abs(turn));
  return widened({ ...seen, ...carried }, turnShare * Math.abs(turn));
}

const widened = (shaft: Tracked, by: number): Tracked => ({ ...shaft, sd: radians(Math.hypot(shaft.sd, by)) });

/** Both ends and their direction at the time of the picture's middle line, and how far the reading turned it, radians. An end that is not seen is taken to lie at the usual reach. */
function carry(seen: Tracked, rate: GripRate, picture: PictureReading, shutter: RollingShutter) {
  const { x, y } = seen.grip;
  const reach = usualReach * picture.height;
  const end = seen.head ?? imagePoint(x + reach * Math.cos(seen.angle), y + reach * Math.sin(seen.angle));
  const [byX, byY] = [seen.angularRate * (y - end.y), seen.angularRate * (end.x - x)];
  const early = secondsAfterMiddle(seen.grip, picture, shutter);
  const late = secondsAfterMiddle(end, picture, shutter);
  const grip = imagePoint(x - early * rate.x, y - early * rate.y);
  const head = imagePoint(end.x - late * (rate.x + byX), end.y - late * (rate.y + byY));
  const angle = angleBetween(grip, head);
  return { grip, head, angle, turn: wrapAngle(radians(angleBetween(seen.grip, end) - angle)) };
}

const angleBetween = (from: Point<"image">, to: Point<"image">) => radians(Math.atan2(to.y - from.y, to.x - from.x));

/** When the line through a place is read, seconds after the picture's middle line. */
function secondsAfterMiddle(at: Point<"image">, picture: PictureReading, { time, towards }: RollingShutter): number {
  const { width, height } = picture;
  const share: Readonly<Record<ReadingWay, number>> = {
    down: at.y / height,
    up: 1 - at.y / height,
    right: at.x / width,
    left: 1 - at.x / width,
  };
  return (time / 1000) * (Math.min(1, Math.max(0, share[towards])) - 0.5);
}

/** Root of the mean square of reading times from the least to the most, none longer than a picture. */
function usualRoot(interval: number): number {
  const most = Math.min(usualTime.most, interval);
  const least = Math.min(usualTime.least, most);
  return Math.sqrt((most * most + most * least + least * least) / 3);
}
