import type { ScreenStore } from "./screen-store.ts";
import type { UiStore } from "./ui-store.ts";

export interface FollowChangeParts {
  readonly store: ScreenStore;
  readonly ui: UiStore;
  /** The name under which this page's own changes are told. */
  readonly ownName: string;
}

/** Says what somebody else changed, and who: nothing of the practice moves by an unseen hand. What was changed before the page opened is old. */
export function followChange({ store, ui, ownName }: FollowChangeParts): void {
  let known: number | null | undefined;
  store.subscribe(({ practice }, { practice: before }) => {
    if (practice === null || practice === before) return;
    const { revision, lastChange } = practice;
    const at = lastChange?.at ?? null;
    const isNew = known !== undefined && at !== known && revision !== before?.revision;
    known = at;
    if (isNew && lastChange !== null && lastChange.by !== ownName) {
      ui.setState({ notice: `${lastChange.by}: ${lastChange.what}.` });
    }
  });
}
