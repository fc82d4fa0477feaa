import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { checksOf } from "./checks-of.ts";
import type { PhoneState } from "./phone-store.ts";

/** How the phone is doing, as the screens are told. */
export function captureState(state: PhoneState, droppedMessages: number): CaptureState {
  const { source } = state;
  const checks = checksOf(state);
  const { width, height } = source ?? { width: 0, height: 0 };
  return {
    source: source?.kind ?? "none",
    running: source !== null,
    picture: source === null ? null : { width, height },
    framesPerSecond: state.framesPerSecond,
    posesPerSecond: state.posesPerSecond,
    lookedFrames: state.lookedFrames,
    missedFrames: state.missedFrames,
    failedFrames: state.failedFrames,
    droppedMessages,
    unsentReps: state.unsentReps,
    delegate: state.pose?.delegate ?? null,
    calibration: state.calibration,
    warnings: state.warnings.map((sentence) => sentence.slice(0, 300)),
    stationNews: state.stationNews.slice(0, 300),
    battery: state.battery,
    checks: Object.fromEntries(checks.map(({ id, state: standing }) => [id, standing])),
    said: Object.fromEntries(checks.map(({ id, words, todo }) => [id, { words, todo }])),
  };
}
