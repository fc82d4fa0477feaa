import type { LineSweep } from "./line-sweep-state.ts";
import type { LineWindow } from "./line-window.ts";
import { placeIn } from "./place-in.ts";
import { ownLikeness, type RodColour } from "./rod-likeness.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";
import type { WorkPicture } from "./work-picture.ts";

/** Working pixels about a line that are on it, and how far beside it the rod is no more: what is of its colour there too is a lawn. */
const onLine = 2;
const besideLine = 5;

/** What the last line that was looked along shows: how much of it is of the rod's colour, and how far it goes on beyond, working pixels. */
const seen = { coloured: 0, bare: 0 };

/**
 * With the rod's colour known: the end on which the line goes on, bare, beyond what is of that colour is the head's, for out of the butt looks nothing but the rod. Adds its odds to
 * `sweep.side`. `moving`, 0 to 1: how far the hands are from where they were; while nothing moves, what happens to lie beyond one end would be told again and again. `torso` in working pixels.
 */
export function sideByColour(
  sweep: LineSweep,
  window: LineWindow,
  work: WorkPicture,
  rod: RodColour,
  moving: number,
  torso: number,
  tuning: ShaftTuning,
): void {
  const { wanted, evidence, side, directions } = sweep;
  const like = tuning.colouredFrom * ownLikeness(rod);
  const from = tuning.nearest * torso;
  for (let near = 0; near < directions / 2; near++) {
    if (wanted[near] === 0 || !((evidence[near] as number) > tuning.leastEvidence)) continue;
    const far = near + directions / 2;
    lookAlong(sweep, window, work, near, from, like);
    const { coloured, bare } = seen;
    lookAlong(sweep, window, work, far, from, like);
    if (Math.max(coloured, seen.coloured) < tuning.colouredLeast * torso) continue;
    const more = (bare - seen.bare) / torso;
    const clear = Math.max(0, Math.abs(more) - tuning.bareUnclear);
    const odds = moving * Math.sign(more) * Math.min(tuning.bareMost, tuning.bareSlope * clear);
    side[near] = (side[near] as number) + odds;
    side[far] = (side[far] as number) - odds;
  }
}

/** Looks along a direction's line, from `from` on; `like` is the likeness from which a place is of the rod's colour. */
function lookAlong(
  { step, offset, end }: LineSweep,
  { centreX, centreY }: LineWindow,
  work: WorkPicture,
  direction: number,
  from: number,
  like: number,
): void {
  const cos = Math.cos(direction * step);
  const sin = Math.sin(direction * step);
  const aside = offset[direction] as number;
  const to = end[direction] as number;
  let last = from;
  seen.coloured = 0;
  for (let r = from; r < to; r++) {
    const x = centreX + cos * r;
    const y = centreY + sin * r;
    let most = 0;
    for (let i = aside - onLine; i <= aside + onLine; i++)
      most = Math.max(most, likenessAt(work, x - sin * i, y + cos * i));
    const about = Math.max(
      likenessAt(work, x - sin * (aside - besideLine), y + cos * (aside - besideLine)),
      likenessAt(work, x - sin * (aside + besideLine), y + cos * (aside + besideLine)),
    );
    if (most - about < like) continue;
    seen.coloured++;
    last = r;
  }
  seen.bare = Math.max(0, to - last);
}

function likenessAt(work: WorkPicture, x: number, y: number): number {
  const at = placeIn(work, x, y);
  return at < 0 ? 0 : (work.likeness[at] as number);
}
