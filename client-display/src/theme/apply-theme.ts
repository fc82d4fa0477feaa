import type { SettingsStore } from "../store/settings-store.ts";
import { palettes } from "./palette.ts";

/** Gives the style sheets the colours of the chosen theme, so that canvas and page share one list. */
export function applyTheme(root: HTMLElement, settings: SettingsStore): void {
  const apply = (): void => {
    const { theme } = settings.getState();
    root.dataset["theme"] = theme;
    root.style.colorScheme = theme === "sun" ? "light" : "dark";
    for (const [part, colour] of Object.entries(palettes[theme])) root.style.setProperty(`--${part}`, colour);
  };
  apply();
  settings.subscribe(apply);
}
