import type { RelayClock } from "../link/keep-clock.ts";
import type { ScreenStore } from "../store/screen-store.ts";
import type { SettingsStore } from "../store/settings-store.ts";
import { createSoundBox, type SoundBox } from "./sound-box.ts";

/** The sound box on the real browser, woken by the first touch or key where tones are wanted. */
export function openSound(store: ScreenStore, settings: SettingsStore, clock: RelayClock): SoundBox {
  const canSpeak = "speechSynthesis" in window;
  const sound = createSoundBox({
    store,
    settings,
    clock,
    openContext: () => new AudioContext({ latencyHint: "interactive" }),
    speak: canSpeak
      ? (sentence) => {
          window.speechSynthesis.cancel();
          window.speechSynthesis.speak(new SpeechSynthesisUtterance(sentence));
        }
      : null,
  });
  const wakeIfWanted = (): void => {
    if (settings.getState().tones) sound.wake();
  };
  window.addEventListener("pointerdown", wakeIfWanted);
  window.addEventListener("keydown", wakeIfWanted);
  return sound;
}
