import type { SetUpCheckId } from "@overcue/shared-geometry/wire/set-up-checks";

export type CheckState = "ok" | "not-yet" | "problem" | "unknown";

/** One line of the set-up list: how it stands, with its number where there is one, and what to do where it is not right. */
export interface SetUpCheck {
  readonly id: SetUpCheckId;
  readonly state: CheckState;
  readonly words: string;
  readonly todo: string;
}
