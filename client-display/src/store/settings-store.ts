import { createStore, type StoreApi } from "zustand/vanilla";
import { readDisplaySettings, type DisplaySettings } from "./display-settings.ts";

export type SettingsStore = StoreApi<DisplaySettings>;

/** The part of the browser's storage that is needed; a private window may refuse it. */
export interface TextStore {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, text: string) => void;
}

const key = "overcue-screen";

/** Settings that survive a reload where the browser lets them. */
export function createSettingsStore(storage: TextStore): SettingsStore {
  const store = createStore<DisplaySettings>(() => readDisplaySettings(quietly(() => storage.getItem(key))));
  store.subscribe((settings) => {
    quietly(() => {
      storage.setItem(key, JSON.stringify(settings));
      return null;
    });
  });
  return store;
}

function quietly<T>(attempt: () => T): T | null {
  try {
    return attempt();
  } catch {
    return null;
  }
}
