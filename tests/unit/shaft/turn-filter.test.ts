import { arrivalOdds } from "@overcue/client-capture/shaft/arrival-odds";
import { shaftTuning } from "@overcue/client-capture/shaft/shaft-tuning";
import {
  makeTurnFilter,
  predictTurn,
  predictTurnBack,
  type TurnFilter,
} from "@overcue/client-capture/shaft/turn-filter";
import { expect, test } from "vitest";
import { seeded } from "./draw-picture.ts";

const randomFilter = (seed: number): TurnFilter => {
  const random = seeded(seed);
  const filter = makeTurnFilter(arrivalOdds(60, "right", shaftTuning).low);
  for (let i = 0; i < filter.belief.length; i++) filter.belief[i] = random() / filter.belief.length;
  filter.absent = random();
  return filter;
};

const dot = (a: TurnFilter, b: TurnFilter): number =>
  a.belief.reduce((sum, value, i) => sum + value * (b.belief[i] ?? 0), a.absent * b.absent);

const total = (filter: TurnFilter): number => filter.belief.reduce((sum, value) => sum + value, filter.absent);

test.each([0.004, 0.016, 0.033, 0.2])("T13 moving the odds on by %f s keeps their sum", (seconds) => {
  const filter = randomFilter(3);
  const before = total(filter);
  predictTurn(filter, seconds, 0.3, shaftTuning);
  expect(total(filter)).toBeCloseTo(before, 3);
});

test.each([0.004, 0.033, 0.2])("T14 the step back is the adjoint of the step on (%f s)", (seconds) => {
  const forward = randomFilter(1);
  const later = randomFilter(2);
  const start = { ...forward, belief: forward.belief.slice() };
  predictTurn(forward, seconds, 0.3, shaftTuning);
  const here = dot(forward, later);
  predictTurnBack(later, seconds, 0.3, shaftTuning);
  expect(dot(start, later) / here).toBeCloseTo(1, 2);
});

test("T15 what is not seen coasts on at its rate", () => {
  const filter = makeTurnFilter(arrivalOdds(240, "right", shaftTuning).low);
  filter.belief.fill(0);
  filter.absent = 0;
  // The ladder's rate of 6 rad/s (index 15), pointing at 0.
  filter.belief[15 * 240] = 1;
  for (let i = 0; i < 6; i++)
    predictTurn(filter, 1 / 60, 0, { ...shaftTuning, jump: 0, vanish: 0, appear: 0, rateWander: 0 });
  let best = 0;
  const column = (at: number): number => {
    let sum = 0;
    for (let rate = 0; rate < filter.belief.length / 240; rate++) sum += filter.belief[rate * 240 + at] ?? 0;
    return sum;
  };
  for (let i = 0; i < 240; i++) if (column(i) > column(best)) best = i;
  expect(Math.abs(best * 1.5 - (6 * 0.1 * 180) / Math.PI)).toBeLessThan(4);
});
