import { followNoRep } from "@overcue/client-display/store/follow-no-rep";
import { createScreenStore, dropRep } from "@overcue/client-display/store/screen-store";
import { createUiStore } from "@overcue/client-display/store/ui-store";
import { notCountedReasons, type NoRep } from "@overcue/shared-geometry/wire/rep";
import { describe, expect, test } from "vitest";
import { practiceState, readingAt, repIds, sure, checkpointTold } from "../../fakes/practice-scenes.ts";

describe("D9 a movement that was no rep", () => {
  const told = checkpointTold(repIds[1], readingAt("arm-level-back", 5000, 0.2, sure("ball-to-toe")));
  const before = { ...createScreenStore().getState(), checkpoints: [told] };

  test("D9 leaves none of its checkpoints on the ground, and other reps' as they are", () => {
    expect(dropRep(before, { repId: repIds[1], why: null }).checkpoints).toEqual([]);
    // The same list: a new one would be told anew, and heard.
    expect(dropRep(before, { repId: repIds[0], why: null }).checkpoints).toBe(before.checkpoints);
  });

  test.each(notCountedReasons)(
    "D13 is said once where a rep was expected of it, with what to do, and not in a pause: %s",
    (why) => {
      const store = createScreenStore();
      const ui = createUiStore();
      followNoRep(store, ui);
      const noticeAfter = (noRep: NoRep): string | null => {
        ui.setState({ notice: null });
        store.setState((state) => dropRep(state, noRep));
        return ui.getState().notice;
      };
      expect(noticeAfter({ repId: repIds[0], why: null })).toBeNull();
      expect(noticeAfter({ repId: repIds[1], why })).toMatch(/^Not counted: .+\. .+\.$/);
      ui.setState({ notice: null });
      store.setState({ practice: practiceState({ paused: true }) });
      expect(ui.getState().notice).toBeNull();
      expect(noticeAfter({ repId: repIds[2], why })).toBeNull();
    },
  );
});
