import { menuItems } from "../actions/menu-items.ts";
import { runCommand } from "../actions/run-command.ts";
import { ChoiceList } from "./choice-list.tsx";
import { Panel } from "./panel.tsx";
import { fitSizes } from "../sizes/fit-sizes.ts";
import { viewingOf } from "../store/display-settings.ts";
import { useParts, useScreen, useSettings, useUi } from "./parts.ts";
import { useWindowSize } from "./use-window-size.ts";

/** Chosen from with a remote too, so its lines are as large as what is read from where the golfer stands. */
export function MenuScreen() {
  const parts = useParts();
  const practice = useScreen((state) => state.practice);
  const size = useWindowSize();
  const settings = useSettings((all) => all);
  const lastVoided = useUi((state) => state.lastVoided);
  const choices = menuItems(practice, lastVoided).map(({ id, label, choice }) => ({
    id,
    label,
    onChoose: () => {
      if (choice.kind === "show") {
        parts.ui.setState({ overlay: choice.overlay });
        return;
      }
      parts.ui.setState({ overlay: "none" });
      void runCommand(choice.command, parts);
    },
  }));
  return (
    <Panel name="menu" title="Menu" choiceSize={fitSizes(size, viewingOf(settings)).mustRead}>
      <ChoiceList choices={choices} label="What to do" />
      <p className="hint">
        Arrow keys or a presenter’s forward key move, Enter or its back key chooses. Single keys: V void, N next stage,
        P pause, M mute, S session, Q quiet, H help.
      </p>
    </Panel>
  );
}
