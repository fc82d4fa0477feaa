import { milliseconds } from "@overcue/shared-geometry/units";
import type { CheckpointTime } from "./checkpoint-time.ts";
import { crossing, type Stretch } from "./date-crossing.ts";
import { dateLow } from "./date-low.ts";
import { dateLowestHead } from "./date-lowest-head.ts";
import type { FitOptions, SeriesPoint } from "./fit-crossing.ts";
import type { PlaceInPicture } from "./heads-in-picture.ts";
import { median } from "./median.ts";
import type { RepSamples } from "./rep-samples.ts";
import type { Rest } from "./rest.ts";
import type { Segment } from "./segment-reps.ts";
import { slopeOf } from "./slope-of.ts";
import { swingTuning } from "./swing-tuning.ts";

const headFit: FitOptions = {
  least: swingTuning.fitWindow.least,
  change: swingTuning.fitWindow.head,
  sharedErrors: swingTuning.sharedErrors,
};

/** What a rep's lifted shaft says of impact: where the head is along the target line, metres, and how the club hangs, radians. */
interface Lifted {
  readonly headX: readonly SeriesPoint[];
  readonly elevation: readonly SeriesPoint[];
}

/**
 * When the head meets the ball: by its lowest place in the picture; where it was not seen there, when it is back where it stood behind the ball, as the picture shows it
 * or as the lifted shaft does, the surer. Null where it was not seen then either.
 */
export function dateImpact(
  rep: RepSamples,
  segment: Segment,
  lifted: Lifted,
  strike: Stretch,
  levelAt: number | null,
): CheckpointTime | null {
  const lastTop = segment.tops[segment.tops.length - 1]?.t ?? strike.from;
  const heads = headsIn(rep);
  const passing = heads.filter(({ t }) => t >= strike.from && t <= strike.to);
  const lowest = dateLowestHead(passing, segment.wayDown);
  if (lowest !== null) return { checkpoint: "impact", t: milliseconds(lowest.t), sd: lowest.sd };
  const byLift = likelierImpact(
    crossing(
      "impact",
      lifted.headX,
      rep.address === null ? 0 : headAtRest(lifted.headX, rep.address),
      strike,
      "up",
      headFit,
      swingTuning.lasting.head,
    ),
    dateLow(lifted.elevation, { from: lastTop, to: segment.endedAt + swingTuning.afterEnd }, levelAt),
  );
  const inPicture = pastItsRest(heads, rep.address, strike);
  if (byLift === null)
    return inPicture === null ? null : { ...inPicture, sd: Math.max(inPicture.sd, inPicture.steadySd) };
  const sd = Math.hypot(byLift.sd, swingTuning.lasting.impact * segment.wayDown);
  return inPicture !== null && inPicture.sd < sd
    ? { ...inPicture, sd: Math.max(inPicture.sd, Math.min(sd, inPicture.steadySd)) }
    : { ...byLift, sd };
}

/** `steadySd`: one standard deviation by the head's pace over a longer time, milliseconds. */
interface InPicture extends CheckpointTime {
  readonly steadySd: number;
}

/** Coming through the ball the head draws away from the camera and rises in the picture past where it rested; how far the club leans has no say in that. */
function pastItsRest(heads: readonly PlaceInPicture[], address: Rest | null, strike: Stretch): InPicture | null {
  const { sd, lasting, change } = swingTuning.seenHead;
  const atRest =
    address === null ? [] : heads.filter(({ t }) => t >= address.from && t <= address.to).map(({ y }) => y);
  if (atRest.length < 4) return null;
  const rest = median(atRest);
  const raised = heads.map(({ t, y }): SeriesPoint => ({ t, value: rest - y, sd }));
  const found = crossing("impact", raised, 0, strike, "up", { ...headFit, change }, lasting);
  return found === null ? null : { ...found, steadySd: lasting / paceAbout(raised, found.t) };
}

/** How fast the head rises about a moment, metres a millisecond: one that is found short for a picture jumps, and would seem to be dated to nothing. */
function paceAbout(raised: readonly SeriesPoint[], t: number): number {
  const slope = slopeOf(raised.filter((point) => Math.abs(point.t - t) <= swingTuning.seenHead.paceOver));
  return slope > 0 ? slope : 1e-6;
}

/** The surer of the two; a fast club's hanging where they do not agree, for then the lean was wrong, and its hanging does not need that. */
function likelierImpact(byHead: CheckpointTime | null, byLow: CheckpointTime | null): CheckpointTime | null {
  if (byHead === null || byLow === null) return byHead ?? byLow;
  const agree = Math.abs(byHead.t - byLow.t) <= 2 * Math.hypot(byHead.sd, byLow.sd);
  const surer = byHead.sd <= byLow.sd ? byHead : byLow;
  return agree || byLow.sd > swingTuning.low.fast ? surer : byLow;
}

/** Where the head stood behind the ball before the rep set off. */
function headAtRest(headX: readonly SeriesPoint[], rest: Rest): number {
  return median(headX.filter((point) => point.t >= rest.from && point.t <= rest.to).map((point) => point.value));
}

/** The head's places in the picture where it was seen. */
function headsIn({ samples }: RepSamples): PlaceInPicture[] {
  return samples.flatMap(({ t, inPicture }) => {
    const head = inPicture?.head ?? null;
    return head === null ? [] : [{ t, x: head.x, y: head.y }];
  });
}
