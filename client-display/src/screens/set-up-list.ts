import { setUpCheckIds, type SetUpCheckId } from "@overcue/shared-geometry/wire/set-up-checks";
import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { checkWords, unknownCheckWords } from "../words/set-up-words.ts";

export type CheckState = CaptureState["checks"][string];

export interface SetUpItem {
  readonly id: string;
  readonly state: CheckState;
  readonly words: string;
  readonly todo: string;
}

export interface SetUpQuestion {
  readonly phones: number;
  readonly capture: CaptureState | null;
  readonly spaceClear: boolean;
  readonly readable: { readonly meetsRule: boolean; readonly readableFrom: number; readonly viewingDistance: number };
}

export interface SetUpList {
  readonly items: readonly SetUpItem[];
  /** What to do next, in one sentence; null when nothing is left to do. */
  readonly next: string | null;
}

/** The checklist as it stands, and the first thing that is not right yet. What only a person can say comes last. */
export function setUpList({ phones, capture, spaceClear, readable }: SetUpQuestion): SetUpList {
  const items: SetUpItem[] = [
    item("paired", phones > 0 ? "ok" : "not-yet", "Phone paired", "Scan the code with the phone."),
    item(
      "camera",
      capture?.running === true ? "ok" : "not-yet",
      "Camera running",
      "On the phone, let the page use the camera and press start.",
    ),
    ...phoneItems(capture),
    item(
      "screen",
      readable.meetsRule ? "ok" : "problem",
      `Screen readable from ${readable.viewingDistance.toFixed(1)} m`,
      `This screen can be read up to ${readable.readableFrom.toFixed(1)} m: bring it nearer and set the distance, or use a larger one.`,
    ),
    item(
      "space",
      spaceClear || capture?.checks["space-clear"] === "ok" ? "ok" : "not-yet",
      "Space clear all round and overhead",
      "Look round and up, swing the club slowly once, then tick “space clear”.",
    ),
  ];
  const warning = capture?.warnings[0] ?? null;
  const open = items.find(({ state }) => state === "problem") ?? items.find(({ state }) => state === "not-yet");
  return { items, next: open === undefined ? warning : open.todo };
}

/** The phone's own words, with its numbers, go before this page's. Its question about the space is this page's last item. */
function phoneItems(capture: CaptureState | null): readonly SetUpItem[] {
  const checks = capture?.checks ?? {};
  const known = setUpCheckIds.filter((id) => id in checks && id !== "space-clear");
  const others = Object.keys(checks).filter((id) => !isKnown(id));
  return [...known, ...others].map((id) => {
    const own = isKnown(id) ? checkWords[id] : unknownCheckWords(id);
    const said = capture?.said?.[id];
    const todo = said === undefined || said.todo === "" ? own.todo : said.todo;
    return item(id, checks[id] ?? "unknown", said?.words ?? own.good, todo);
  });
}

const isKnown = (id: string): id is SetUpCheckId => setUpCheckIds.some((known) => known === id);

const item = (id: string, state: CheckState, words: string, todo: string): SetUpItem => ({ id, state, words, todo });
