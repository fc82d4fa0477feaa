import { readHands } from "@overcue/client-capture/shaft/hands";
import { smoothShaft } from "@overcue/client-capture/shaft/smooth-shaft";
import type { RodColour } from "@overcue/client-capture/shaft/rod-likeness";
import { startShaftTracker, trackShaft, type Effort } from "@overcue/client-capture/shaft/track-shaft";
import { milliseconds, radians } from "@overcue/shared-geometry/units";
import type { Film } from "../../scenes/film.ts";
import { renderScene, type SceneFrame } from "../../scenes/render-scene.ts";
import type { SceneSettings } from "../../scenes/scene-settings.ts";
import { factOf } from "./findable.ts";
import type { HoughFinder } from "./hough-lines.ts";
import { count, emptyTally, type Fact, type Tally } from "./tally.ts";

/** The answers that are judged: the tracker's three, and OpenCV's. */
export const methods = ["now", "lagged", "full", "HoughLinesP"] as const;
export type Method = (typeof methods)[number];
export type Tallies = Record<Method, Tally>;

/** HoughLinesP is slow and remembers nothing: it gets every so many-th picture. */
const houghEvery = 4;

export interface JudgeOptions {
  readonly hough: HoughFinder | null;
  /** Milliseconds, for what a picture costs. */
  readonly clock: () => number;
  /** Stop after this many pictures; Infinity for all. */
  readonly mostFrames: number;
  /** Whether the tracker keeps up with a camera, or looks at a clip. */
  readonly effort: Effort;
  /** What is known of the rod's colour beforehand. */
  readonly rodColour: RodColour | null;
  /** The scene's pictures, where they are shown more than once; left out: painted as they are asked for. */
  readonly film?: Film;
  /** What becomes of the pictures before they are shown: a clip is coded. Left out: nothing. */
  readonly through?: (frames: Iterable<SceneFrame>) => AsyncIterable<SceneFrame>;
}

/** Shows a rendered scene to the tracker and to OpenCV, picture by picture, and counts what they say. */
export async function judgeScene(settings: SceneSettings, seed: number, options: JudgeOptions): Promise<Tallies> {
  const tallies: Tallies = { now: emptyTally(), lagged: emptyTally(), full: emptyTally(), HoughLinesP: emptyTally() };
  const facts = new Map<number, Fact>();
  let tracker = startShaftTracker({
    handed: settings.camera.handed,
    keepEvidence: milliseconds(1e9),
    effort: options.effort,
    rodColour: options.rodColour,
    lagged: true,
    rodAlong: settings.club.rod !== null,
  });
  const frames = renderScene(settings, seed, options.film);
  for await (const frame of options.through?.(frames) ?? frames) {
    if (frame.index >= options.mostFrames) break;
    const fact = factOf(frame);
    facts.set(frame.t, fact);
    const before = options.clock();
    const { state, output } = trackShaft(tracker, { picture: frame.picture, t: frame.t, body: frame.body });
    tallies.now.millisecondsSpent += options.clock() - before;
    tracker = state;
    count(tallies.now, output.now, fact);
    if (output.lagged) count(tallies.lagged, output.lagged, factAt(facts, output.lagged.t));
    if (options.hough && frame.index % houghEvery === 0) judgeHough(tallies.HoughLinesP, options, frame, fact);
  }
  const before = options.clock();
  const full = smoothShaft(tracker.evidence);
  tallies.full.millisecondsSpent = options.clock() - before;
  for (const answer of full) count(tallies.full, answer, factAt(facts, answer.t));
  return tallies;
}

/** OpenCV states no error of its own, so nothing is asked of that. */
function judgeHough(tally: Tally, { hough, clock }: JudgeOptions, frame: SceneFrame, fact: Fact): void {
  const hands = frame.body && readHands(frame.body);
  const before = clock();
  const angle = hands && hough ? hough.find(frame.picture, hands) : null;
  tally.millisecondsSpent += clock() - before;
  if (angle === null) count(tally, { status: "lost" }, fact);
  else count(tally, { status: "tracked", angle: radians(angle) }, fact);
}

/** @throws Error where an answer is for a picture that was never shown. */
function factAt(facts: ReadonlyMap<number, Fact>, t: number): Fact {
  const fact = facts.get(t);
  if (!fact) throw new Error(`an answer for ${t} ms, when no picture was taken`);
  return fact;
}
