/** A figure beside its goal. */
export interface Judged {
  readonly name: string;
  readonly value: number;
  readonly goal: string;
  readonly met: boolean;
  readonly unit: "cm" | "%";
}

export const atMost = (name: string, value: number, most: number, unit: Judged["unit"]): Judged => ({
  name,
  value,
  goal: `<= ${most.toFixed(1)}`,
  met: value <= most,
  unit,
});

export const atLeast = (name: string, value: number, least: number, unit: Judged["unit"]): Judged => ({
  name,
  value,
  goal: `>= ${least.toFixed(1)}`,
  met: value >= least,
  unit,
});

/** Percent, both ends allowed. */
export const between = (name: string, value: number, least: number, most: number): Judged => ({
  name,
  value,
  goal: `${least} to ${most}`,
  met: value >= least && value <= most,
  unit: "%",
});

/** One decimal; a dash for a figure of nothing. */
export const oneDecimal = (value: number): string => (Number.isNaN(value) ? "-" : value.toFixed(1));

/** The figures with their goals as rows of Markdown; `keptFigure` reads them back. */
export const goalTable = (judged: readonly Judged[]): string[] => [
  "| figure | measured | goal | |",
  "| --- | --: | --: | --- |",
  ...judged.map(
    ({ name, value, goal, met, unit }) =>
      `| ${name} | ${oneDecimal(value)} ${unit} | ${goal} ${unit} | ${met ? "met" : "MISSED"} |`,
  ),
];

/** The figure of that name in a kept section; not a number where it has none. */
export function keptFigure(section: string, name: string): number {
  const row = section.split("\n").find((line) => line.startsWith(`| ${name} |`)) ?? "";
  return Number(/\|\s*(-?[\d.]+) (?:cm|%)/.exec(row)?.[1]);
}
