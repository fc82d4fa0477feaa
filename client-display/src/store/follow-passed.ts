import type { LiveFeed } from "../link/live-feed.ts";
import type { ScreenStore } from "./screen-store.ts";

/** Carries the slow things of the estimates, the checkpoint last passed and the one that the club is held at, into the store. Answers how to stop. */
export function followPassed(feed: LiveFeed, store: ScreenStore): () => void {
  return feed.subscribe(() => {
    const estimate = feed.latest();
    const passed = estimate?.checkpoint ?? null;
    const held = estimate?.phase === "hold" ? passed : null;
    const before = store.getState();
    if (passed !== before.passed || held !== before.held) store.setState({ passed, held });
  });
}
