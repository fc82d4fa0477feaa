/** A value with its first and second rate of change. */
export interface Jet {
  readonly value: number;
  readonly rate: number;
  readonly bend: number;
}

/** The quintic between two jets `span` seconds apart, `u` seconds after the first: joins agree in value, rate and bend (C2). Hermite. */
export function quinticPiece(from: Jet, to: Jet, span: number, u: number): Jet {
  const c2 = from.bend / 2;
  const miss = to.value - from.value - from.rate * span - c2 * span * span;
  const missRate = to.rate - from.rate - from.bend * span;
  const missBend = to.bend - from.bend;
  const h2 = span * span;
  const c3 = (10 * miss - 4 * missRate * span + (missBend * h2) / 2) / (h2 * span);
  const c4 = (-15 * miss + 7 * missRate * span - missBend * h2) / (h2 * h2);
  const c5 = (6 * miss - 3 * missRate * span + (missBend * h2) / 2) / (h2 * h2 * span);
  return {
    value: from.value + u * (from.rate + u * (c2 + u * (c3 + u * (c4 + u * c5)))),
    rate: from.rate + u * (2 * c2 + u * (3 * c3 + u * (4 * c4 + u * 5 * c5))),
    bend: 2 * c2 + u * (6 * c3 + u * (12 * c4 + u * 20 * c5)),
  };
}
