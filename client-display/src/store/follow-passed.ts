import type { LiveFeed } from "../link/live-feed.ts";
import type { ScreenStore } from "./screen-store.ts";

/** Carries the one slow thing of the estimates, the checkpoint last passed, into the store. Answers how to stop. */
export function followPassed(feed: LiveFeed, store: ScreenStore): () => void {
  return feed.subscribe(() => {
    const passed = feed.latest()?.checkpoint ?? null;
    if (passed !== store.getState().passed) store.setState({ passed });
  });
}
