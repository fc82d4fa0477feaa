import type { PracticeCommand, PracticeState } from "@overcue/shared-geometry/wire/practice";
import type { Overlay } from "../store/ui-store.ts";

export type MenuChoice =
  { readonly kind: "ask"; readonly command: PracticeCommand } | { readonly kind: "show"; readonly overlay: Overlay };

export interface MenuItem {
  readonly id: string;
  readonly label: string;
  readonly choice: MenuChoice;
}

const ask = (id: string, label: string, command: PracticeCommand): MenuItem => ({
  id,
  label,
  choice: { kind: "ask", command },
});
const show = (overlay: Overlay, label: string): MenuItem => ({ id: overlay, label, choice: { kind: "show", overlay } });

/** What can be done from the ground screen now, most wanted first. */
export function menuItems(practice: PracticeState | null, lastVoided: string | null): readonly MenuItem[] {
  return [...(practice === null ? [] : practiceItems(practice, lastVoided)), ...pageItems];
}

function practiceItems(practice: PracticeState, lastVoided: string | null): readonly MenuItem[] {
  const items: MenuItem[] = [
    ask("pause", practice.paused ? "Go on" : "Pause", { do: "pause", paused: !practice.paused }),
    lastVoided === null
      ? ask("void", "Void the last rep", { do: "void-rep", repId: null })
      : ask("restore", "Take the voided rep back in", { do: "restore-rep", repId: lastVoided }),
  ];
  if (practice.proposals.length > 0) {
    items.push(ask("accept", "Take the next cue", { do: "accept-proposal" }));
    items.push(ask("decline", "Keep this cue", { do: "decline-proposal" }));
  }
  if (practice.mode !== "practice") items.push(ask("practise", "Start to practise", { do: "start-practice" }));
  if (practice.retentionOffer !== null)
    items.push(ask("test", "Do the test that is due", { do: "start-retention-test" }));
  items.push(ask("stage", "Next stage", { do: "next-stage" }));
  items.push(ask("mute", practice.muted ? "Sound on" : "Mute", { do: "mute", muted: !practice.muted }));
  if (practice.view !== "session") items.push(ask("session", "Show the session", { do: "view", view: "session" }));
  if (practice.view !== "live") items.push(ask("live", "Show the live ground", { do: "view", view: "live" }));
  if (practice.view !== "quiet") items.push(ask("quiet", "Quiet: answers only", { do: "view", view: "quiet" }));
  if (practice.mode === "practice") items.push(ask("baseline", "New baseline", { do: "start-baseline" }));
  return items;
}

const pageItems: readonly MenuItem[] = [
  show("set-up", "Check the set-up"),
  show("codes", "Pairing codes"),
  show("settings", "Screen and sound"),
  show("help", "Help and cautions"),
];
