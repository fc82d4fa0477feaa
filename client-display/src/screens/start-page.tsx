import type { Role } from "@overcue/shared-geometry/wire/hello";
import { secretFromFragment } from "@overcue/shared-geometry/wire/pairing";
import type { ReactNode } from "react";
import { createRoot } from "react-dom/client";
import { connectRelay } from "../link/connect-relay.ts";
import { createLiveFeed } from "../link/live-feed.ts";
import { openSound } from "../sound/open-sound.ts";
import { followChange } from "../store/follow-change.ts";
import { followNoRep } from "../store/follow-no-rep.ts";
import { followStation } from "../store/follow-station.ts";
import { followPassed } from "../store/follow-passed.ts";
import { followVerdict } from "../store/follow-verdict.ts";
import { createScreenStore } from "../store/screen-store.ts";
import { createSettingsStore } from "../store/settings-store.ts";
import { createUiStore } from "../store/ui-store.ts";
import { applyTheme } from "../theme/apply-theme.ts";
import { LinkTrouble } from "./link-trouble.tsx";
import { PartsContext } from "./parts.ts";

/** Puts the real browser, socket and clock together and shows `page`; without a secret in the address, says so. */
export function startPage(role: Role, name: string, page: ReactNode): void {
  const element = document.getElementById("root");
  if (element === null) throw new Error("startPage: the page has no element with the id root");
  const root = createRoot(element);
  const settings = createSettingsStore(localStorage);
  applyTheme(document.documentElement, settings);
  const secret = secretFromFragment(location.hash);
  if (secret === null) {
    root.render(<LinkTrouble link={{ kind: "unpaired" }} />);
    return;
  }
  const store = createScreenStore();
  const feed = createLiveFeed();
  const ownName = settings.getState().personName || name;
  const link = connectRelay({
    origin: location.origin,
    role,
    secret,
    name: ownName,
    store,
    feed,
    now: () => performance.now(),
  });
  const ui = createUiStore();
  const now = (): number => performance.now();
  const later = (run: () => void, milliseconds: number): void => {
    setTimeout(run, milliseconds);
  };
  // A coach's page has a line for it, with its own changes.
  if (role === "display") {
    followChange({ store, ui, ownName });
    followStation(store, ui);
  }
  followNoRep(store, ui);
  followPassed(feed, store);
  const staysFor = (): number => settings.getState().verdictSeconds * 1000;
  followVerdict({ store, ui, feed, staysFor, now, later });
  const sound = openSound(store, settings, link.clock);
  root.render(<PartsContext value={{ store, settings, ui, feed, link, sound }}>{page}</PartsContext>);
}
