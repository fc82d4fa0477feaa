import type { ScreenState } from "../store/screen-store.ts";

export type ScreenName = "trouble" | "pairing" | "cautions" | "set-up" | "session" | "practice";

export interface ScreenQuestion {
  readonly link: ScreenState["link"];
  readonly phones: number;
  readonly source: "none" | "camera" | "clip" | "demo";
  readonly cautionsRead: boolean;
  readonly setUpDone: boolean;
  readonly view: "live" | "quiet" | "session";
}

/** Which screen the golfer needs now. A demo or a clip has nobody swinging: neither cautions nor set-up. */
export function chooseScreen(question: ScreenQuestion): ScreenName {
  const { link, phones, source, cautionsRead, setUpDone, view } = question;
  if (link.kind === "refused" || link.kind === "unpaired") return "trouble";
  const somebodySwings = source !== "demo" && source !== "clip";
  if (!setUpDone && phones === 0) return "pairing";
  if (somebodySwings && !cautionsRead) return "cautions";
  if (somebodySwings && !setUpDone) return "set-up";
  return view === "session" ? "session" : "practice";
}
