import type { ScreenStore } from "./screen-store.ts";
import type { UiStore } from "./ui-store.ts";

/** Says what the phone's watch over its sticks has to say, once: the mark on what is read stays, as long as something is out of place. */
export function followStation(store: ScreenStore, ui: UiStore): void {
  store.subscribe(({ capture }, { capture: before }) => {
    const news = capture?.stationNews ?? "";
    if (news !== "" && news !== (before?.stationNews ?? "")) ui.setState({ notice: news });
  });
}
