import type { LiveFeed } from "../link/live-feed.ts";
import type { ScreenStore } from "./screen-store.ts";
import type { UiStore } from "./ui-store.ts";

/** The end of one rep is not the beginning of the next: movement closes a verdict only after this. */
const verdictLeast = 1_500;

export interface FollowVerdictParts {
  readonly store: ScreenStore;
  readonly ui: UiStore;
  readonly feed: LiveFeed;
  /** How long a verdict stays where no new rep begins, milliseconds. */
  readonly staysFor: () => number;
  readonly now: () => number;
  readonly later: (run: () => void, milliseconds: number) => void;
}

/** Puts each new verdict on the screen and takes it off again. The verdict that was there when the page opened is old. */
export function followVerdict({ store, ui, feed, staysFor, now, later }: FollowVerdictParts): void {
  let known: string | null | undefined;
  let shownAt = 0;
  const hide = (repId: string): void => {
    if (ui.getState().verdictShown === repId) ui.setState({ verdictShown: null });
  };
  store.subscribe(({ practice }) => {
    if (practice === null) return;
    const repId = practice.verdict?.repId ?? null;
    if (known === undefined) known = repId;
    if (repId === known) return;
    known = repId;
    if (repId === null) return;
    shownAt = now();
    ui.setState({ verdictShown: repId });
    later(() => {
      hide(repId);
    }, staysFor());
  });
  feed.subscribe(() => {
    const shown = ui.getState().verdictShown;
    if (shown !== null && feed.latest()?.phase === "back" && now() - shownAt > verdictLeast) hide(shown);
  });
}
