import type { Tone } from "./tone-of.ts";

const start = 523;
const slides: Readonly<Record<Tone["slide"], number>> = { rising: 784, falling: 349, level: 523 };
const lasts = 0.16;
const loudness = 0.35;

/** Plays a tone now: 160 ms that slide up, down or not at all, on its side, swelling in and out so that it does not click. */
export function playTone(context: BaseAudioContext, tone: Tone): void {
  const now = context.currentTime;
  const oscillator = new OscillatorNode(context, { type: "triangle", frequency: start });
  const gain = new GainNode(context, { gain: 0 });
  const panner = new StereoPannerNode(context, { pan: tone.pan * 0.9 });
  oscillator.frequency.setValueAtTime(start, now);
  oscillator.frequency.exponentialRampToValueAtTime(slides[tone.slide], now + lasts);
  gain.gain.linearRampToValueAtTime(loudness, now + 0.012);
  gain.gain.setValueAtTime(loudness, now + lasts - 0.04);
  gain.gain.linearRampToValueAtTime(0, now + lasts);
  oscillator.connect(gain).connect(panner).connect(context.destination);
  oscillator.start(now);
  oscillator.stop(now + lasts);
}
