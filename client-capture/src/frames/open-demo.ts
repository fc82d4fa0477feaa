import { defaultCamera } from "@overcue/shared-geometry/default-camera";
import { pixels } from "@overcue/shared-geometry/units";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { usualGolfer, type DemoPlan } from "../demo-motion/demo-golfer-settings.ts";
import { demoPupil } from "../demo-motion/demo-pupil.ts";
import { nextDemoRep, type PupilsPractice } from "../demo-motion/next-demo-rep.ts";
import type { OpenedSource } from "../session/phone-session.ts";
import { rendersInSoftware } from "../workers/renders-in-software.ts";
import { DemoGolferSource } from "./demo-golfer/demo-golfer-source.ts";
import { seededRandom } from "./demo-golfer/seeded-random.ts";

/** Drawn without a graphics processor a full picture takes a second: a smaller show is then better to look at. */
const full = { width: 720, height: 1280, framesPerSecond: 30 };
const small = { width: 450, height: 800, framesPerSecond: 30 };
const lookFor = 1.5;

/** One rep after a still address; a slow one is held for a look, going back and coming down in turn. */
function nextPlan(practice: PupilsPractice | null, index: number): DemoPlan {
  const rep = nextDemoRep(demoPupil, practice);
  const at = index % 2 === 0 ? "arm-level-back" : "arm-level-down";
  const shown = rep.kind === "rehearsal" ? { ...rep, hold: { at, seconds: lookFor } as const } : rep;
  // Each plan begins and ends at a still address: the next one goes on from there without a jump.
  const still = { do: "still", seconds: 1.2 } as const;
  return { golfer: usualGolfer, club: true, ball: true, items: [still, shown, still] };
}

/**
 * The demo golfer, shown to a virtual phone behind it. It has no pace of its own: the run shows it no faster than it moves, and slower
 * where the device cannot draw and measure every picture, so that what is measured does not depend on the device. Each rep goes by what the practice
 * says when the one before has ended: by habit in the baseline, then following the cue part of the way.
 */
export function openDemo(practice: () => PracticeState | null): Promise<OpenedSource> {
  const { station } = usualGolfer;
  // The relay changes to the demo golfer's own book when it hears of this source: what it said before is about somebody else.
  const ownPractice = (): PupilsPractice | null => {
    const told = practice();
    return told?.golfer.invented === true ? told : null;
  };
  const { width, height, framesPerSecond } = rendersInSoftware() ? small : full;
  let shown = 0;
  const source = new DemoGolferSource({
    camera: defaultCamera(pixels(width), pixels(height), station.handed),
    framesPerSecond,
    pace: null,
    rodColour: "orange",
    random: seededRandom(7),
    nextPlan: () => nextPlan(ownPractice(), shown++),
  });
  return Promise.resolve({ source, settings: station, camera: null });
}
