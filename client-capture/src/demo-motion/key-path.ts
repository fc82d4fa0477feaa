import { restingChannels, type Channel, type KeyPose } from "./key-pose.ts";
import { quinticPiece, type Jet } from "./quintic-piece.ts";
import { splineSlopes } from "./spline-slopes.ts";

/**
 * A posture at an instant (seconds). The motion goes through it `pass`ing, comes to `rest` there, or `turn`s round: hands and club stop for
 * the instant while the body goes on.
 */
export interface Knot {
  readonly t: number;
  readonly pose: KeyPose;
  readonly how: "pass" | "rest" | "turn";
}

export interface KeyPath {
  readonly duration: number;
  /** The posture at `t`; before the first and after the last knot it stands still. */
  at(t: number): KeyPose;
  /** Rate of one channel, per second. */
  rate(channel: Channel, t: number): number;
}

const turningChannels: ReadonlySet<Channel> = new Set<Channel>(["phi", "psi", "gripX", "gripY", "gripZ"]);

/**
 * The smooth way through the knots: every channel twice continuously differentiable. Rates come from a cubic spline between the stops, the pieces
 * are quintics, so that a motion leaves and reaches rest without a jerk.
 * @throws RangeError where there are fewer than two knots or their times do not rise.
 */
export function keyPath(knots: readonly Knot[]): KeyPath {
  const [first] = knots;
  const last = knots.at(-1);
  if (!first || !last || knots.length < 2) throw new RangeError("keyPath: needs two knots or more");
  const times = knots.map((knot) => knot.t);
  if (times.some((t, k) => k > 0 && !(t > (times[k - 1] ?? 0)))) throw new RangeError("keyPath: times must rise");
  const channels = Object.keys(first.pose) as Channel[];
  const jets = new Map(channels.map((channel) => [channel, channelJets(knots, times, channel)]));

  const jetAt = (channel: Channel, piece: number, held: number): Jet => {
    const own = jets.get(channel) ?? [];
    const from = own[piece];
    const to = own[piece + 1];
    if (!from || !to) throw new RangeError(`keyPath: no channel ${channel}`);
    const start = times[piece] ?? 0;
    return quinticPiece(from, to, (times[piece + 1] ?? 0) - start, held - start);
  };
  return {
    duration: last.t - first.t,
    at(t) {
      const held = Math.min(last.t, Math.max(first.t, t));
      const piece = pieceOf(times, held);
      const pose: Partial<Record<Channel, number>> = {};
      for (const channel of channels) pose[channel] = jetAt(channel, piece, held).value;
      return pose as KeyPose;
    },
    rate: (channel, t) => (t < first.t || t > last.t ? 0 : jetAt(channel, pieceOf(times, t), t).rate),
  };
}

function pieceOf(times: readonly number[], t: number): number {
  let low = 0;
  let high = times.length - 2;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if ((times[middle] ?? 0) <= t) low = middle;
    else high = middle - 1;
  }
  return low;
}

function channelJets(knots: readonly Knot[], times: readonly number[], channel: Channel): readonly Jet[] {
  const values = knots.map((knot) => knot.pose[channel]);
  const rests = knots.map(
    (knot, k) => knot.how === "rest" || k === 0 || k === knots.length - 1 || restingChannels.has(channel),
  );
  const stops = knots.map((knot, k) => rests[k] === true || (knot.how === "turn" && turningChannels.has(channel)));
  const rates = new Array<number>(knots.length).fill(0);
  let from = 0;
  for (let to = 1; to < knots.length; to++) {
    if (stops[to] !== true) continue;
    const slopes = splineSlopes(times.slice(from, to + 1), values.slice(from, to + 1), 0, 0);
    slopes.forEach((slope, k) => (rates[from + k] = slope));
    from = to;
  }
  return knots.map((_, k) => {
    const rate = rates[k] ?? 0;
    const value = values[k] ?? 0;
    if (rests[k] === true) return { value, rate: 0, bend: 0 };
    return {
      value,
      rate,
      bend: (bendFrom(times, values, rates, k, k - 1) + bendFrom(times, values, rates, k, k + 1)) / 2,
    };
  });
}

/** Second derivative at knot `k` of the cubic between it and its neighbour: equal from both sides except at a stop. */
function bendFrom(
  times: readonly number[],
  values: readonly number[],
  rates: readonly number[],
  k: number,
  neighbour: number,
): number {
  const span = (times[neighbour] ?? 0) - (times[k] ?? 0);
  const rise = (values[neighbour] ?? 0) - (values[k] ?? 0);
  return (6 * rise) / (span * span) - (4 * (rates[k] ?? 0) + 2 * (rates[neighbour] ?? 0)) / span;
}
