import type { Page } from "playwright-core";
import { practiceStateSchema, type PracticeState } from "@overcue/shared-geometry/wire/practice";

/** The practice that the relay told a page itself last, as the page's own socket received it: what its cue is drawn from. Null before the first. */
export function watchCue(page: Page): () => PracticeState | null {
  let last: PracticeState | null = null;
  page.on("websocket", (socket) => {
    socket.on("framereceived", ({ payload }) => {
      const [event, message] = eventOf(String(payload));
      if (event === "practice") last = practiceStateSchema.parse(message);
    });
  });
  return () => last;
}

/** Socket.IO sends an event as `42["name",argument]` (protocol 5 over Engine.IO 4). */
function eventOf(frame: string): readonly unknown[] {
  return frame.startsWith("42[") ? (JSON.parse(frame.slice(2)) as readonly unknown[]) : [];
}
