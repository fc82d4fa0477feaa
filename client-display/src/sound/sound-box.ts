import { createStore, type StoreApi } from "zustand/vanilla";
import type { RelayClock } from "../link/keep-clock.ts";
import { newNotCounted } from "../store/follow-no-rep.ts";
import type { ScreenStore } from "../store/screen-store.ts";
import type { SettingsStore } from "../store/settings-store.ts";
import { notCountedWords } from "../words/reasons.ts";
import { playTone } from "./play-tone.ts";
import { toneOf } from "./tone-of.ts";

export interface SoundState {
  /** From the call to the loudspeaker as the browser states it, whole milliseconds; null before the first tone. */
  readonly outputLag: number | null;
  /** From the checkpoint to the loudspeaker at the last tone, whole milliseconds. */
  readonly lastTone: number | null;
  readonly voice: boolean;
}

export interface SoundBox {
  readonly state: StoreApi<SoundState>;
  /** To be called out of a click or a key: browsers give no sound before. */
  readonly wake: () => void;
  readonly tryOut: () => void;
}

export interface SoundParts {
  readonly store: ScreenStore;
  readonly settings: SettingsStore;
  readonly clock: RelayClock;
  readonly openContext: () => AudioContext;
  /** Null where the browser cannot speak. */
  readonly speak: ((sentence: string) => void) | null;
}

/** Tones at checkpoints and the spoken sentence after a rep, or after a swing that is not counted, both only where they were asked for and nobody muted them. */
export function createSoundBox({ store, settings, clock, openContext, speak }: SoundParts): SoundBox {
  const state = createStore<SoundState>(() => ({ outputLag: null, lastTone: null, voice: speak !== null }));
  let context: AudioContext | null = null;

  const lagOf = (playing: AudioContext): number =>
    Math.round(1000 * (playing.baseLatency + (Number.isFinite(playing.outputLatency) ? playing.outputLatency : 0)));

  store.subscribe((now, before) => {
    const { practice, checkpoints } = now;
    if (practice === null || practice.muted || practice.paused) return;
    const told = checkpoints.at(-1);
    const isNew = told !== undefined && checkpoints !== before.checkpoints;
    if (isNew && settings.getState().tones && practice.nextRepAnswered && context?.state === "running") {
      const tone = toneOf(told, practice.aims);
      if (tone !== null) {
        playTone(context, tone);
        const lag = lagOf(context);
        const relayNow = clock.relayNow();
        state.setState({
          outputLag: lag,
          lastTone: relayNow === null ? null : Math.round(relayNow - told.reading.at + lag),
        });
      }
    }
    const { verdict } = practice;
    const isNewVerdict =
      before.practice !== null && verdict !== null && verdict.repId !== before.practice.verdict?.repId;
    if (!settings.getState().speech) return;
    if (isNewVerdict && verdict.kind !== "inside") speak?.(verdict.sentence);
    const notCounted = newNotCounted(now, before);
    if (notCounted !== null) speak?.(notCountedWords[notCounted]);
  });

  const wake = (): void => {
    context ??= openContext();
    void context.resume();
  };
  return {
    state,
    wake,
    tryOut: () => {
      wake();
      if (context === null) return;
      const playing = context;
      void playing.resume().then(() => {
        playTone(playing, { slide: "rising", pan: 0 });
        setTimeout(() => {
          playTone(playing, { slide: "falling", pan: -1 });
        }, 500);
        setTimeout(() => {
          playTone(playing, { slide: "falling", pan: 1 });
          state.setState({ outputLag: lagOf(playing) });
        }, 1000);
      });
    },
  };
}
