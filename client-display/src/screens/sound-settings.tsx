import { useParts, useScreen, useSettings } from "./parts.ts";
import { useStore } from "zustand";

export function SoundSettings() {
  const { settings, sound } = useParts();
  const tones = useSettings((all) => all.tones);
  const speech = useSettings((all) => all.speech);
  const muted = useScreen((state) => state.practice?.muted ?? false);
  const { outputLag, lastTone, voice } = useStore(sound.state);
  return (
    <section>
      <h2>Sound</h2>
      <label className="chip">
        <input
          type="checkbox"
          checked={tones}
          onChange={(event) => {
            settings.setState({ tones: event.target.checked });
            if (event.target.checked) sound.wake();
          }}
        />
        A tone at each checkpoint
      </label>
      <p className="hint">
        Rising: in the band to be felt. Falling: outside, from the left beyond the ball, from the right towards the
        heels. Level: too close to call.
      </p>
      <label className="chip">
        <input
          type="checkbox"
          checked={speech}
          disabled={!voice}
          onChange={(event) => {
            settings.setState({ speech: event.target.checked });
          }}
        />
        The sentence after the rep, spoken
      </label>
      {!voice && <p className="hint">This browser has no voice to speak with.</p>}
      <button
        type="button"
        onClick={() => {
          sound.wake();
          sound.tryOut();
        }}
      >
        Try the tones
      </button>
      <p className="hint" role="status">
        {outputLag === null
          ? "Play a tone to measure the delay."
          : `This device plays ${outputLag} ms after it is told to.`}{" "}
        {lastTone !== null && `The last tone came ${lastTone} ms after the club passed its checkpoint.`}
      </p>
      <p className="hint">
        Wireless headphones often lag another 100 to 250 ms, more than this page can see: with them, use the spoken
        sentence only. Beside others on a range, leave sound off.
        {muted && " The practice is muted at the moment: M or the menu brings sound back."}
      </p>
    </section>
  );
}
