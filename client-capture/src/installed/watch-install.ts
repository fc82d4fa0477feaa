/** Chromium's offer to install a page (Web App Manifest incubations), which the DOM types do not know. */
interface InstallOffer extends Event {
  prompt(): Promise<void>;
}

export interface AppState {
  /** Opened from the home screen, without the browser's bars. */
  readonly standalone: boolean;
  /** Asks the browser to install the page; null where it offers no such thing now. */
  readonly install: (() => Promise<void>) | null;
}

/** Tells at once and at each change whether the page runs as an installed app, and whether it can be installed. */
export function watchInstall(tell: (state: AppState) => void): void {
  const mode = matchMedia("(display-mode: standalone)");
  let offer: InstallOffer | null = null;
  const tellNow = (): void => {
    const open = offer;
    const install =
      open === null
        ? null
        : async (): Promise<void> => {
            // An offer is good for one question.
            offer = null;
            await open.prompt();
            tellNow();
          };
    tell({ standalone: mode.matches, install });
  };
  mode.addEventListener("change", tellNow);
  addEventListener("beforeinstallprompt", (event) => {
    event.preventDefault();
    offer = event as InstallOffer;
    tellNow();
  });
  addEventListener("appinstalled", () => {
    offer = null;
    tellNow();
  });
  tellNow();
}
