import { createStore, type StoreApi } from "zustand/vanilla";

export const overlays = ["none", "menu", "settings", "help", "codes", "set-up"] as const;
export type Overlay = (typeof overlays)[number];

/** What the golfer does on this screen at the moment; gone with a reload. */
export interface UiState {
  readonly overlay: Overlay;
  readonly setUpDone: boolean;
  readonly spaceClear: boolean;
  /** One sentence about the last thing asked for, such as why it was refused; null when there is nothing to say. */
  readonly notice: string | null;
  /** The rep whose verdict is on the screen. */
  readonly verdictShown: string | null;
  /** The rep voided last from here, to be taken back in. */
  readonly lastVoided: string | null;
}

export type UiStore = StoreApi<UiState>;

export const createUiStore = (): UiStore =>
  createStore<UiState>(() => ({
    overlay: "none",
    setUpDone: false,
    spaceClear: false,
    notice: null,
    verdictShown: null,
    lastVoided: null,
  }));
