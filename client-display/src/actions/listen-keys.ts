import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import type { Parts } from "../screens/parts.ts";
import { moveFocus } from "../screens/choice-list.tsx";
import { keyAction, type KeyAction, type KeyContext } from "./key-action.ts";
import { runCommand } from "./run-command.ts";
import { turnSheet } from "./turn-sheet.ts";

/** Hears keys and presenter remotes for the whole page. Answers how to stop. */
export function listenKeys(parts: Parts): () => void {
  const hear = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (isTyping(event.target) && event.key !== "Escape") return;
    const { letterKeys, oneButton } = parts.settings.getState();
    const action = keyAction(event.key, { ...whatIsInFront(), letterKeys, oneButton });
    if (action === null) return;
    event.preventDefault();
    doAction(action, parts);
  };
  window.addEventListener("keydown", hear);
  return () => {
    window.removeEventListener("keydown", hear);
  };
}

const find = (selector: string): HTMLElement | null => document.querySelector<HTMLElement>(selector);

function whatIsInFront(): Pick<KeyContext, "front" | "asksBand"> {
  const asksBand = find("[data-asks-band]") !== null;
  if (find("[data-choices]") !== null) return { front: "list", asksBand };
  if (find("[data-main]") !== null) return { front: "gate", asksBand };
  if (find("[data-sheets]") !== null) return { front: "sheets", asksBand };
  return { front: find("[data-close]") === null ? "practice" : "panel", asksBand };
}

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement) return true;
  return target instanceof HTMLInputElement && target.type !== "checkbox" && target.type !== "radio";
}

function doAction(action: KeyAction, parts: Parts): void {
  const { store, ui } = parts;
  const practice = store.getState().practice;
  const ask = (command: PracticeCommand): void => {
    void runCommand(command, parts);
  };
  switch (action.kind) {
    case "move": {
      const list = find("[data-choices]");
      if (list !== null) moveFocus(list, action.by);
      return;
    }
    case "choose": {
      const focused = document.activeElement;
      const main =
        focused instanceof HTMLElement && focused.closest("[data-choices]") !== null ? focused : find("[data-main]");
      main?.click();
      return;
    }
    case "turn":
      if (!turnSheet(find("[data-sheets]"), action.by) && action.closes) find("[data-close]")?.click();
      return;
    case "close":
      find("[data-close]")?.click();
      return;
    case "menu":
      ui.setState({ overlay: "menu" });
      return;
    case "help":
    case "settings":
      ui.setState({ overlay: action.kind });
      return;
    case "felt":
      find(`[data-choice="${action.band}"]`)?.click();
      return;
    case "void-rep":
      ask({ do: "void-rep", repId: null });
      return;
    case "next-stage":
      ask({ do: "next-stage" });
      return;
    case "pause":
      if (practice !== null) ask({ do: "pause", paused: !practice.paused });
      return;
    case "mute":
      if (practice !== null) ask({ do: "mute", muted: !practice.muted });
      return;
    case "session":
    case "quiet":
      if (practice !== null) ask({ do: "view", view: practice.view === action.kind ? "live" : action.kind });
      return;
  }
}
