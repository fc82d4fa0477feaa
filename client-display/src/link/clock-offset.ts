/** One round trip to the relay's clock, milliseconds: local time of asking and of the answer, and the relay's answer. */
export interface ClockSample {
  readonly asked: number;
  readonly answered: number;
  readonly relayTime: number;
}

export interface ClockOffset {
  /** Relay time minus local time, milliseconds. */
  readonly offset: number;
  /** The true offset lies within this of `offset`: half the round trip (Cristian 1989). */
  readonly within: number;
}

/** Drift of two quartz clocks stays far under this, so a quick sample is believed for a while only. */
const driftPerMillisecond = 50e-6;

/** The offset by the sample that bounds it closest now, older ones widened by what the clocks may have drifted since. Null without samples. */
export function clockOffset(samples: readonly ClockSample[], now: number): ClockOffset | null {
  let best: ClockOffset | null = null;
  for (const { asked, answered, relayTime } of samples) {
    if (answered < asked) continue;
    const within = (answered - asked) / 2 + Math.max(0, now - answered) * driftPerMillisecond;
    if (best === null || within < best.within) best = { offset: relayTime - (asked + answered) / 2, within };
  }
  return best;
}
