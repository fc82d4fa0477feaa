/** One round trip: sent and received on the page's clock, answered on the relay's; milliseconds. */
export interface RoundTrip {
  readonly sent: number;
  readonly received: number;
  readonly relayTime: number;
}

const remembered = 12;

/** Relay time minus page time, and how wrong that may be at most: half of the quickest round trip. */
export interface ClockOffset {
  readonly offset: number;
  readonly uncertainty: number;
}

/**
 * The relay's clock from round trips, by the quickest of the last few: the less time a question was under way, the less the two ways can
 * differ (Cristian 1989). Null for no round trip; trips that end before they began are left out.
 */
export function clockOffset(trips: readonly RoundTrip[]): ClockOffset | null {
  let best: RoundTrip | null = null;
  for (const trip of trips.slice(-remembered)) {
    const took = trip.received - trip.sent;
    if (took >= 0 && (best === null || took <= best.received - best.sent)) best = trip;
  }
  if (best === null) return null;
  const half = (best.received - best.sent) / 2;
  return { offset: best.relayTime - best.sent - half, uncertainty: half };
}
