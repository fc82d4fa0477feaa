import { quantile } from "../quantile.ts";
import type { StationMeasure } from "./measure-station.ts";
import type { Laid, Whereabouts } from "./station-scene.ts";

export interface JudgedFigure {
  readonly name: string;
  readonly value: number;
  readonly goal: string;
  readonly met: boolean;
}

/** Chi-square with 7 degrees of freedom: 95 % and 99.9 % (NIST/SEMATECH e-Handbook of Statistical Methods, table 1.3.6.7.4). */
const within95 = 14.067;
const within999 = 24.322;

type Found = NonNullable<StationMeasure["found"]>;

const foundOf = (measures: readonly StationMeasure[]): Found[] =>
  measures.map(({ found }) => found).filter((found) => found !== null);

const share = (count: number, of: number): number => (of === 0 ? Number.NaN : (100 * count) / of);

/** A camera within 5 cm and half a degree of the true one. */
const isClose = ({ position, turned }: Found): boolean => position <= 0.05 && turned <= 0.5;

export function judgeStations(measures: readonly StationMeasure[]): JudgedFigure[] {
  const all = foundOf(measures);
  const byHand = foundOf(measures.filter(({ laid }) => laid === "by hand"));
  const wrong = all.filter(({ squaredSds }) => squaredSds > within999).length;
  const covers = share(byHand.filter(({ squaredSds }) => squaredSds <= within95).length, byHand.length);
  return [
    { name: "cameras farther off than their stated error allows", value: wrong, goal: "= 0", met: wrong === 0 },
    { name: "95 % region covers, sticks laid by hand, %", value: covers, goal: ">= 90", met: covers >= 90 },
  ];
}

export function stationTable(measures: readonly StationMeasure[], judged: readonly JudgedFigure[]): string {
  const cases: readonly (readonly [Whereabouts, Laid])[] = [
    ["stepped away", "exactly"],
    ["stepped away", "by hand"],
    ["at address", "exactly"],
  ];
  return [
    "| figure | measured | goal | |",
    "| --- | --: | --: | --- |",
    ...judged.map(
      ({ name, value, goal, met }) => `| ${name} | ${value.toFixed(0)} | ${goal} | ${met ? "met" : "MISSED"} |`,
    ),
    "",
    "| golfer, sticks laid | pictures | found % | within 5 cm and 0.5 degrees, % of found | lens off p50 cm | p95 cm | turned p50 degrees | p95 |",
    "| --- | --: | --: | --: | --: | --: | --: | --: |",
    ...cases.map(([where, laid]) => {
      const some = measures.filter((one) => one.where === where && one.laid === laid);
      const found = foundOf(some);
      const off = found.map(({ position }) => 100 * position);
      const turned = found.map((one) => one.turned);
      const cells = [
        String(some.length),
        share(found.length, some.length).toFixed(0),
        share(found.filter(isClose).length, found.length).toFixed(0),
        quantile(off, 0.5).toFixed(1),
        quantile(off, 0.95).toFixed(1),
        quantile(turned, 0.5).toFixed(2),
        quantile(turned, 0.95).toFixed(2),
      ];
      return `| ${where}, ${laid} | ${cells.join(" | ")} |`;
    }),
  ].join("\n");
}
