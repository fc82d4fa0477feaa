import type { SetUpCheck } from "../checks/set-up-check.ts";
import { checksOf } from "../session/checks-of.ts";
import { usePhoneState } from "./use-phone.ts";

/** The set-up list. It is made at each change of the state, a few times a second, and compared as text: React draws only what is new. */
export function useChecks(): readonly SetUpCheck[] {
  const text = usePhoneState((state) => JSON.stringify(checksOf(state)));
  return JSON.parse(text) as readonly SetUpCheck[];
}
