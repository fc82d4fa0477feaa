import fc from "fast-check";
import { expect, test } from "vitest";
import { clockOffset } from "@overcue/client-capture/link/clock-offset";
import { startCaptureClock } from "@overcue/client-capture/frames/capture-clock";
import { playingClock } from "@overcue/client-capture/running/source-clock";

test("C1 no round trip gives no clock, and one that ends before it began counts as none", () => {
  expect(clockOffset([])).toBeNull();
  expect(clockOffset([{ sent: 10, received: 9, relayTime: 100 }])).toBeNull();
});

test("C1 the true offset always lies within the stated uncertainty, however lopsided the ways are", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.array(fc.tuple(fc.double({ min: 0, max: 500, noNaN: true }), fc.double({ min: 0, max: 500, noNaN: true })), {
        minLength: 1,
        maxLength: 40,
      }),
      (offset, ways) => {
        const trips = ways.map(([there, back], index) => {
          const sent = 1000 * index;
          return { sent, received: sent + there + back, relayTime: sent + there + offset };
        });
        const found = clockOffset(trips);
        expect(found).not.toBeNull();
        expect(Math.abs((found?.offset ?? Infinity) - offset)).toBeLessThanOrEqual((found?.uncertainty ?? 0) + 1e-6);
      },
    ),
  );
});

test("C2 capture times rise strictly, never lie after the arrival, and keep the stamps' steps once the least delay was seen", () => {
  const clock = startCaptureClock();
  const times = [12, 9, 4, 20, 4, 30].map((delay, index) => {
    const stamp = 5000 + 16 * index;
    const arrived = 100 + 16 * index + delay;
    const t = clock(stamp, arrived);
    expect(t).toBeLessThanOrEqual(arrived + 0.01);
    return t;
  });
  for (const [index, t] of times.entries()) expect(t).toBeGreaterThan(times[index - 1] ?? -Infinity);
  expect((times[4] ?? 0) - (times[3] ?? 0)).toBeCloseTo(16, 6);
});

test("C3 a clip plays no faster than it was filmed, and a late picture moves the later ones with it", () => {
  const clock = playingClock();
  expect(clock.waitFor(0, 1000)).toBe(0);
  expect(clock.waitFor(40, 1010)).toBe(30);
  expect(clock.toPageTime(40)).toBe(1040);
  expect(clock.waitFor(80, 1500)).toBe(0);
  expect(clock.toPageTime(80)).toBe(1500);
  expect(clock.waitFor(120, 1500)).toBe(40);
});
