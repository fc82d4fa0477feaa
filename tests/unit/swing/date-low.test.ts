import { expect, it } from "vitest";
import { dateLow } from "@overcue/client-capture/swing/date-low";

const degree = Math.PI / 180;
/** A club that hangs lowest at 1000 ms, 60 degrees under level, and turns round there by 90 degrees in 100 ms. */
const hanging = Array.from({ length: 31 }, (_, n) => {
  const t = 820 + n * 10;
  const turned = ((t - 1000) / 100) * (Math.PI / 2);
  return { t, value: Math.asin(-Math.sin(60 * degree) * Math.cos(turned)), sd: 0.2 * degree };
});
const within = { from: 820, to: 1120 };

it("K2.10 impact is a little before the club hangs lowest, for the hands lead the head through the ball", () => {
  const level = dateLow(hanging, within, 900);
  const unseen = dateLow(hanging, within, null);
  expect(unseen?.t).toBeCloseTo(1000, 0);
  expect(level?.t).toBeLessThan(995);
  expect(level?.t).toBeGreaterThan(980);
  expect(level?.sd).toBeGreaterThan(unseen?.sd ?? Infinity);
});

it("K2.10 a club that hangs lowest before it was level has not come to the ball", () => {
  expect(dateLow(hanging, within, 1050)).toBeNull();
});

it("K2.10 a club that is put down is not swung through", () => {
  expect(
    dateLow(
      hanging.filter(({ t }) => t <= 1010),
      within,
      900,
    ),
  ).toBeNull();
});
