import type { StepOutput } from "../pipeline/step.ts";
import { findWarnings } from "./find-warnings.ts";
import type { LiveReading } from "./live-numbers.ts";
import type { PhoneStore } from "./phone-store.ts";

/** Tells the store what was found in the newest picture, how fast pictures and poses come, and what is to be warned of. */
export function tellFinding(store: PhoneStore, output: StepOutput, rates: LiveReading, databaseMissing: boolean): void {
  const shaft = output.shaft.now;
  const { source, battery, failedFrames, repTrouble, brightness, hasTorch, torchOn, newerPage, stationNews } =
    store.getState();
  store.setState({
    finding: {
      shaft: shaft.status,
      reason: shaft.status === "tracked" ? null : shaft.reason,
      hands: output.hands,
    },
    framesPerSecond: rates.frames,
    posesPerSecond: rates.poses,
    lookedFrames: rates.looked,
    missedFrames: rates.missed,
    warnings: findWarnings({
      source,
      framesPerSecond: rates.frames,
      bestFramesPerSecond: rates.bestFrames,
      posesPerSecond: rates.poses,
      missedShare: rates.missedShare,
      battery,
      repTrouble,
      stationNews,
      databaseMissing,
      failedFrames,
      brightness,
      torchWaits: hasTorch && !torchOn,
      newerPage,
    }),
  });
}
