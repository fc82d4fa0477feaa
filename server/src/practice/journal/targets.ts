import { metres, type Metres } from "@overcue/shared-geometry/units";
import type { BandLayout } from "@overcue/shared-geometry/bands";
import { drillCue, plainCue, startCue, type Cue } from "../cue/start-cue.ts";
import { builtInDrills } from "../drill/built-in/built-in-drills.ts";
import { fillInFree, findDrill } from "../drill/drill-in-force.ts";
import type { Drill, DrillCheckpoint, PlaceCheckpoint } from "../drill/drill-schema.ts";
import { middleOf, resolveStretch, type GroundStretch } from "../drill/resolve-stretch.ts";
import { wantedChange } from "../figures/carry-over.ts";
import { summarisePlaces, type PlaceSummary } from "../figures/summarise-places.ts";
import { practiceSettings } from "../settings.ts";
import { newLadder } from "./new-golfer.ts";
import { ladderKey, type CountedRep, type GolferBook, type Ladder, type Practice } from "./state.ts";

/** One checkpoint of the drill in force, on this golfer's ground. */
export interface Target {
  readonly checkpoint: PlaceCheckpoint;
  readonly wanted: GroundStretch;
  readonly wantedPlace: Metres;
  readonly baseline: PlaceSummary | null;
  /** From baseline to wanted, metres, signed; 0 where no change is wanted, null before a baseline. */
  readonly change: Metres | null;
  /** Whether the cue goes past what is wanted here, and so whether blocks may move it. */
  readonly exaggerates: boolean;
  readonly cue: Cue;
  readonly say: string;
}

export function layoutOf({ station }: GolferBook): BandLayout {
  return {
    toeLine: metres(station.toeLine),
    heelLine: metres(station.heelLine),
    tolerance: metres(station.tolerance),
  };
}

export function drillOf(book: GolferBook, practice: Practice): Drill {
  const drill = findDrill(book.drillId, practice.drills) ?? builtInDrills[0];
  if (!drill) throw new Error("there are built-in drills");
  return fillInFree(drill, book.wanted);
}

export function ladderOf(book: GolferBook): Ladder {
  return book.ladders[ladderKey(book.station.club, book.drillId)] ?? newLadder;
}

export function withLadder(book: GolferBook, ladder: Ladder): GolferBook {
  return { ...book, ladders: { ...book.ladders, [ladderKey(book.station.club, book.drillId)]: ladder } };
}

/** Readings less certain than this hardly differ in weight, metres: half a line's tolerance. */
export const weightFloor = (layout: BandLayout): Metres => metres(layout.tolerance / 2);

/** The places of one checkpoint over some reps. */
export function summariseCheckpoint(
  reps: readonly CountedRep[],
  checkpoint: PlaceCheckpoint,
  layout: BandLayout,
): PlaceSummary | null {
  const places = reps.flatMap((rep) => rep.places.filter((place) => place.checkpoint === checkpoint));
  return summarisePlaces(places, weightFloor(layout));
}

/** What the golfer does without feedback with this club; null before the baseline is finished or where too few reps show the checkpoint. */
export function baselineAt(book: GolferBook, checkpoint: PlaceCheckpoint): PlaceSummary | null {
  const baseline = book.baselines[book.station.club];
  if (!baseline?.finished) return null;
  const summary = summariseCheckpoint(baseline.reps, checkpoint, layoutOf(book));
  return summary && summary.reps >= practiceSettings.baseline.fewest ? summary : null;
}

/** The checkpoints of the drill in force: what is wanted, where the golfer comes from, where the cue stands. */
export function targetsOf(book: GolferBook, practice: Practice): readonly Target[] {
  const { cues } = ladderOf(book);
  return drillOf(book, practice).checkpoints.map((aim) => {
    const wanted = resolveStretch(aim.wanted, layoutOf(book));
    const baseline = baselineAt(book, aim.checkpoint);
    const change = baseline ? wantedChange(baseline.median, wanted) : null;
    return {
      checkpoint: aim.checkpoint,
      wanted,
      wantedPlace: middleOf(wanted),
      baseline,
      change,
      exaggerates: exaggerates(aim, change),
      cue: cues[aim.checkpoint] ?? firstCue(aim, wanted, baseline, layoutOf(book)),
      say: aim.say,
    };
  });
}

function exaggerates({ cue }: DrillCheckpoint, change: Metres | null): boolean {
  if (cue.direction === "none" || change === null || change === 0) return false;
  return cue.direction === "either" || (cue.direction === "towards-heels") === change > 0;
}

function firstCue(aim: DrillCheckpoint, wanted: GroundStretch, baseline: PlaceSummary | null, layout: BandLayout): Cue {
  if (aim.cue.direction === "none") return plainCue("The drill does not exaggerate here: aim at what is wanted.");
  if (!baseline) return drillCue(wanted, resolveStretch(aim.cue.usual, layout));
  const change = wantedChange(baseline.median, wanted);
  if (change === 0 || exaggerates(aim, change)) return startCue(baseline.median, wanted, layout);
  return plainCue("Your baseline lies on the other side from the one this drill works on: aim at what is wanted.");
}

/** The place to be felt, metres. */
export const feltPlace = ({ wantedPlace, cue }: Target): Metres => metres(wantedPlace + cue.exaggerateBy);
