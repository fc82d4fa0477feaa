import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import type { SetUpCheckId } from "@overcue/shared-geometry/wire/set-up-checks";
import type { PhoneState } from "./phone-store.ts";

/** How the phone is doing, as the screens are told. */
export function captureState(state: PhoneState, droppedMessages: number): CaptureState {
  const { source } = state;
  const { width, height } = source ?? { width: 0, height: 0 };
  return {
    source: source?.kind ?? "none",
    running: source !== null,
    picture: source === null ? null : { width, height },
    framesPerSecond: state.framesPerSecond,
    posesPerSecond: state.posesPerSecond,
    failedFrames: state.failedFrames,
    droppedMessages,
    unsentReps: state.unsentReps,
    delegate: state.pose?.delegate ?? null,
    calibration: state.calibration,
    warnings: state.warnings.map((sentence) => sentence.slice(0, 300)),
    battery: state.battery,
    checks: setUpChecks(state),
  };
}

type Check = "ok" | "not-yet" | "problem" | "unknown";

/** Under this many pictures a second only slow rehearsals can be measured. */
const fewFrames = 24;

/** The set-up checks that can be answered now; the others are left out and so not shown. */
function setUpChecks({
  source,
  framesPerSecond,
  finding,
  calibration,
}: PhoneState): Partial<Record<SetUpCheckId, Check>> {
  const looking = source !== null;
  return {
    certificate: "ok",
    "body-in-frame": !looking ? "unknown" : finding.hands === "lost" ? "not-yet" : "ok",
    "frame-rate": !looking || framesPerSecond === 0 ? "unknown" : framesPerSecond < fewFrames ? "problem" : "ok",
    sticks: stationCheck(calibration),
  };
}

function stationCheck(calibration: PhoneState["calibration"]): Check {
  switch (calibration) {
    case "station":
    case "demo":
      return "ok";
    case "suspect":
      return "problem";
    case "uncalibrated":
      return "not-yet";
  }
}
