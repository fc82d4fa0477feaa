import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import type { RelayLink } from "../link/connect-relay.ts";
import type { ScreenStore } from "../store/screen-store.ts";
import type { UiStore } from "../store/ui-store.ts";

/** Asks the practice for something; a refusal is shown in its own words. */
export async function runCommand(
  command: PracticeCommand,
  { link, store, ui }: { readonly link: RelayLink; readonly store: ScreenStore; readonly ui: UiStore },
): Promise<void> {
  const lastRep = store.getState().reps.at(-1)?.id ?? null;
  const refusal = await link.ask(command);
  if (refusal !== null) {
    ui.setState({ notice: refusal });
    return;
  }
  ui.setState({ notice: null });
  if (command.do === "void-rep")
    ui.setState({ lastVoided: command.repId ?? lastRep, notice: "The last rep is voided." });
  if (command.do === "restore-rep") ui.setState({ lastVoided: null, notice: "The rep counts again." });
}
