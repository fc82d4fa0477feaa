import { bandIds, type BandId } from "@overcue/shared-geometry/bands";

/** What a key asks for. `move` and `choose` go to the list in front, `turn` to the sheets; the others to the practice. */
export type KeyAction =
  | { readonly kind: "move"; readonly by: 1 | -1 }
  | { readonly kind: "choose" }
  /** `closes`: past the last sheet there is the ground again, not the first one. */
  | { readonly kind: "turn"; readonly by: 1 | -1; readonly closes: boolean }
  | { readonly kind: "menu" }
  | { readonly kind: "close" }
  | { readonly kind: "void-rep" | "next-stage" | "pause" | "mute" | "session" | "quiet" | "help" | "settings" }
  | { readonly kind: "felt"; readonly band: BandId };

export interface KeyContext {
  /** What is in front: the practice itself, a list to choose from, a page with one main button, sheets to turn, or a page to read and close. */
  readonly front: "practice" | "list" | "gate" | "sheets" | "panel";
  /** The list asks which band it felt like. */
  readonly asksBand: boolean;
  readonly letterKeys: boolean;
  readonly oneButton: boolean;
}

const letters: Readonly<Record<string, KeyAction>> = {
  v: { kind: "void-rep" },
  n: { kind: "next-stage" },
  p: { kind: "pause" },
  m: { kind: "mute" },
  s: { kind: "session" },
  q: { kind: "quiet" },
  h: { kind: "help" },
  "?": { kind: "help" },
  ",": { kind: "settings" },
};

/**
 * A key by its `KeyboardEvent.key`, or null where it means nothing here. Presenter remotes send PageDown (forward),
 * PageUp (back) and often b or a full stop for a blank screen: forward moves on, back chooses, blank pauses. With one
 * button, any of them chooses.
 */
export function keyAction(key: string, context: KeyContext): KeyAction | null {
  return pageKey(key, context) ?? listKey(key, context) ?? letterKey(key, context);
}

function pageKey(key: string, { front, oneButton }: KeyContext): KeyAction | null {
  if (key !== "PageDown" && key !== "PageUp") return null;
  switch (front) {
    case "practice":
      return { kind: "menu" };
    case "list":
      return oneButton || key === "PageUp" ? { kind: "choose" } : { kind: "move", by: 1 };
    case "gate":
      return { kind: "choose" };
    case "sheets":
      if (oneButton) return { kind: "turn", by: 1, closes: true };
      return key === "PageUp" ? { kind: "close" } : { kind: "turn", by: 1, closes: false };
    case "panel":
      return oneButton || key === "PageUp" ? { kind: "close" } : null;
  }
}

function listKey(key: string, { front, asksBand }: KeyContext): KeyAction | null {
  if (key === "Escape") return front === "practice" ? { kind: "menu" } : front === "gate" ? null : { kind: "close" };
  if (front === "sheets") {
    if (key === "ArrowDown" || key === "ArrowRight" || key === " ") return { kind: "turn", by: 1, closes: false };
    return key === "ArrowUp" || key === "ArrowLeft" ? { kind: "turn", by: -1, closes: false } : null;
  }
  if (front !== "list") return null;
  if (key === "ArrowDown" || key === "ArrowRight") return { kind: "move", by: 1 };
  if (key === "ArrowUp" || key === "ArrowLeft") return { kind: "move", by: -1 };
  const band = /^[1-9]$/.test(key) ? bandIds[Number(key) - 1] : undefined;
  return asksBand && band !== undefined ? { kind: "felt", band } : null;
}

function letterKey(key: string, { front, letterKeys }: KeyContext): KeyAction | null {
  if (front === "gate") return null;
  if (key === "b" || key === ".") return { kind: "pause" };
  return letterKeys ? (letters[key.toLowerCase()] ?? null) : null;
}
