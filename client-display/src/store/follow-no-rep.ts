import type { NotCountedReason } from "@overcue/shared-geometry/wire/rep";
import type { ScreenState, ScreenStore } from "./screen-store.ts";
import type { UiStore } from "./ui-store.ts";
import { notCountedWords } from "../words/reasons.ts";

/** Why the swing that has just ended is not counted; null where there is none, nobody expects one to count, or the practice is paused. */
export function newNotCounted(now: ScreenState, before: ScreenState): NotCountedReason | null {
  return now.noRep === before.noRep || now.practice?.paused === true ? null : (now.noRep?.why ?? null);
}

/** Says of a swing that is not counted why, and what to do. */
export function followNoRep(store: ScreenStore, ui: UiStore): void {
  store.subscribe((now, before) => {
    const why = newNotCounted(now, before);
    if (why !== null) ui.setState({ notice: notCountedWords[why] });
  });
}
