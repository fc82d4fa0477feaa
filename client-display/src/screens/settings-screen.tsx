import { KeySettings } from "./key-settings.tsx";
import { Panel } from "./panel.tsx";
import { PlaceChoice } from "./place-choice.tsx";
import { ScreenSettings } from "./screen-settings.tsx";
import { SoundSettings } from "./sound-settings.tsx";

export function SettingsScreen() {
  return (
    <Panel name="settings" title="Screen and sound">
      <PlaceChoice />
      <div className="columns">
        <ScreenSettings />
        <SoundSettings />
        <KeySettings />
      </div>
    </Panel>
  );
}
