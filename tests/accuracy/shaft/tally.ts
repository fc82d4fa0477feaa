import { angleBetween } from "@overcue/shared-geometry/angle";
import type { ShaftInImage } from "@overcue/shared-geometry/image-shaft";
import type { Point } from "@overcue/shared-geometry/point";
import { degreesFromRadians, type Radians } from "@overcue/shared-geometry/units";

/** What one picture really holds, as far as the judge asks. `angle` null: no club at all. */
export interface Fact {
  readonly angle: Radians | null;
  /** The line through hands and head as the picture shows it, and where the shaft goes into the head; null with `angle`. */
  readonly line: {
    readonly grip: Point<"image">;
    readonly neck: Point<"image">;
    readonly head: Point<"image">;
  } | null;
  /** Enough of the shaft shows for an answer to be expected (see `isFindable`). */
  readonly findable: boolean;
}

/** One method's answers over many pictures, as they are counted. Errors in degrees. */
export interface Tally {
  frames: number;
  findable: number;
  findableTracked: number;
  errors: number[];
  /** Answers that state their error, and those whose error lies inside their stated 95 % interval. */
  stated: number;
  covered: number;
  /** Answers that state how well the line lies across, and where it ends at the head; and those that are as near as they say. */
  placed: number;
  placedRight: number;
  heads: number;
  headsRight: number;
  falseLocks: number;
  confidentWrong: number;
  lost: number;
  millisecondsSpent: number;
}

/** A tracked line farther off than this is another line than the shaft, degrees. */
const falseLockFrom = 10;
const confidentUnder = 2;
const wrongFrom = 6;

export const emptyTally = (): Tally => ({
  frames: 0,
  findable: 0,
  findableTracked: 0,
  errors: [],
  stated: 0,
  covered: 0,
  placed: 0,
  placedRight: 0,
  heads: 0,
  headsRight: 0,
  falseLocks: 0,
  confidentWrong: 0,
  lost: 0,
  millisecondsSpent: 0,
});

/** Counts one answer against what was there. Only `tracked` claims anything; where there is no club every such claim is false. */
export function count(tally: Tally, answer: Pick<ShaftInImage, "status"> & Partial<Claim>, fact: Fact): void {
  tally.frames++;
  if (fact.findable) tally.findable++;
  if (answer.status === "lost") tally.lost++;
  if (answer.status !== "tracked" || answer.angle === undefined) return;
  const sd = answer.sd === undefined ? Infinity : degreesFromRadians(answer.sd);
  if (fact.angle === null) {
    tally.falseLocks++;
    if (sd < confidentUnder) tally.confidentWrong++;
    return;
  }
  if (fact.findable) tally.findableTracked++;
  const error = Math.abs(degreesFromRadians(angleBetween(fact.angle, answer.angle)));
  tally.errors.push(error);
  if (answer.sd !== undefined) tally.stated++;
  if (answer.sd !== undefined && error <= 1.96 * sd) tally.covered++;
  if (fact.line && error <= wrongFrom) countPlaces(tally, answer, fact.line);
  if (error > falseLockFrom) tally.falseLocks++;
  if (sd < confidentUnder && error > wrongFrom) tally.confidentWrong++;
}

interface Claim {
  readonly angle: Radians;
  readonly sd: Radians;
  readonly grip: Point<"image">;
  readonly head: Point<"image"> | null;
  readonly offsetSd: number;
  readonly headSd: number | null;
}

/** Whether the line passes where it says, taken at its own grip point, and whether it ends where it says: anywhere along the head's neck, of which a line shows more or less. */
function countPlaces(
  tally: Tally,
  { grip, head, offsetSd, headSd }: Partial<Claim>,
  line: NonNullable<Fact["line"]>,
): void {
  const length = Math.hypot(line.head.x - line.grip.x, line.head.y - line.grip.y);
  if (length < 1 || grip === undefined || offsetSd === undefined) return;
  const [ux, uy] = [(line.head.x - line.grip.x) / length, (line.head.y - line.grip.y) / length];
  tally.placed++;
  const across = Math.abs((grip.x - line.grip.x) * uy - (grip.y - line.grip.y) * ux);
  if (across <= 1.96 * offsetSd) tally.placedRight++;
  if (!head || headSd === undefined || headSd === null) return;
  tally.heads++;
  const beyond = (end: Point<"image">): number => (head.x - end.x) * ux + (head.y - end.y) * uy;
  if (beyond(line.head) <= 1.96 * headSd && beyond(line.neck) >= -1.96 * headSd) tally.headsRight++;
}

export function addTally(to: Tally, from: Tally): void {
  to.frames += from.frames;
  to.findable += from.findable;
  to.findableTracked += from.findableTracked;
  to.errors.push(...from.errors);
  to.stated += from.stated;
  to.covered += from.covered;
  to.placed += from.placed;
  to.placedRight += from.placedRight;
  to.heads += from.heads;
  to.headsRight += from.headsRight;
  to.falseLocks += from.falseLocks;
  to.confidentWrong += from.confidentWrong;
  to.lost += from.lost;
  to.millisecondsSpent += from.millisecondsSpent;
}
