import { createContext, use } from "react";
import { useStore } from "zustand";
import type { RelayLink } from "../link/connect-relay.ts";
import type { LiveFeed } from "../link/live-feed.ts";
import type { SoundBox } from "../sound/sound-box.ts";
import type { DisplaySettings } from "../store/display-settings.ts";
import type { ScreenState, ScreenStore } from "../store/screen-store.ts";
import type { SettingsStore } from "../store/settings-store.ts";
import type { UiState, UiStore } from "../store/ui-store.ts";

/** What every screen of a page is given. */
export interface Parts {
  readonly store: ScreenStore;
  readonly settings: SettingsStore;
  readonly ui: UiStore;
  readonly feed: LiveFeed;
  readonly link: RelayLink;
  readonly sound: SoundBox;
}

export const PartsContext = createContext<Parts | null>(null);

export function useParts(): Parts {
  const parts = use(PartsContext);
  if (parts === null) throw new Error("useParts: no PartsContext above this component");
  return parts;
}

export function useScreen<T>(select: (state: ScreenState) => T): T {
  return useStore(useParts().store, select);
}

export function useSettings<T>(select: (settings: DisplaySettings) => T): T {
  return useStore(useParts().settings, select);
}

export function useUi<T>(select: (state: UiState) => T): T {
  return useStore(useParts().ui, select);
}
