import fc from "fast-check";
import { expect, it } from "vitest";
import { makeRelayClock } from "@overcue/server/relay-clock";

it("R13 the relay's clock ignores a corrected wall clock and follows it after a sleep", () => {
  let monotonic = 1_000_000;
  let wall = 1_000_000;
  const clock = makeRelayClock(
    () => monotonic,
    () => wall,
  );
  expect(clock()).toBe(1_000_000);
  wall += 59_000;
  expect(clock()).toBe(1_000_000);
  wall -= 3_600_000;
  expect(clock()).toBe(1_000_000);
  monotonic += 500;
  wall = 30_000_000;
  expect(clock()).toBe(30_000_000);
  monotonic += 16;
  expect(clock()).toBe(30_000_016);
});

it("R13 it never steps back, whatever the wall clock does", () => {
  const steps = fc.array(
    fc.record({ run: fc.nat(1_000_000), wall: fc.integer({ min: -10_000_000, max: 10_000_000 }) }),
  );
  fc.assert(
    fc.property(steps, (moves) => {
      let monotonic = 0;
      let wall = 0;
      const clock = makeRelayClock(
        () => monotonic,
        () => wall,
      );
      let last = clock();
      return moves.every((move) => {
        monotonic += move.run;
        wall += move.wall;
        const before = last;
        last = clock();
        return last >= before + move.run;
      });
    }),
  );
});
