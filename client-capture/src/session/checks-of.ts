import type { SetUpCheck } from "../checks/set-up-check.ts";
import { setUpChecks } from "../checks/set-up-checks.ts";
import type { PhoneState } from "./phone-store.ts";

/** The set-up list as the phone's state has it. */
export function checksOf(state: PhoneState): readonly SetUpCheck[] {
  const { source, certificate, calibration, view, framing, top, rod, spaceClear, practice } = state;
  const { brightness, exposureMs, framesPerSecond, hasTorch, torchOn } = state;
  return setUpChecks({
    source,
    certificate,
    calibration,
    view,
    framing,
    top,
    rod,
    rodOn: practice?.rodOn ?? true,
    stage: practice?.stage ?? null,
    light: { brightness, exposureMs, framesPerSecond, hasTorch: hasTorch && !torchOn },
    spaceClear,
  });
}
