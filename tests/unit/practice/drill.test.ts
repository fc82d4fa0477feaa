import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { metres } from "@overcue/shared-geometry/units";
import { builtInDrills } from "@overcue/server/practice/drill/built-in/built-in-drills";
import { drillJsonSchema } from "@overcue/server/practice/drill/drill-json-schema";
import { bookJsonSchema } from "@overcue/server/book/book-json-schema";
import { drillSchema } from "@overcue/server/practice/drill/drill-schema";
import { parseDrill } from "@overcue/server/practice/drill/parse-drill";
import { middleOf, resolveStretch } from "@overcue/server/practice/drill/resolve-stretch";

const layout = { toeLine: metres(0.575), heelLine: metres(0.875), tolerance: metres(0.05) };
const [drill] = builtInDrills;
const text = JSON.stringify(drill, null, 2);
const published = (path: string): unknown =>
  JSON.parse(readFileSync(new URL(`../../../server/src/${path}`, import.meta.url), "utf8"));

describe("drills", () => {
  it("P2 the lines that the tests below expect are the lines where the faults stand", () => {
    const lines = text.split("\n");
    expect(lines[12 - 1]).toContain('"band": "ball-line"');
    expect(lines[40 - 1]).toContain('"offset": -0.05');
  });

  it("P2 the lines that the next test expects are the lines where the faults stand", () => {
    const lines = text.split("\n");
    expect(lines[12 - 1]).toContain('"band": "ball-line"');
    expect(lines[40 - 1]).toContain('"offset": -0.05');
  });

  it("P1 the published schemas are the ones in force (npx node tests/unit/practice/write-schemas.run.ts writes them)", () => {
    expect(published("practice/drill/drill.schema.json")).toEqual(JSON.parse(JSON.stringify(drillJsonSchema())));
    expect(published("book/book.schema.json")).toEqual(JSON.parse(JSON.stringify(bookJsonSchema())));
  });

  it.each(builtInDrills.map((each) => [each.name, each] as const))(
    "P1 %s conforms, and comes back the same from its JSON",
    (_, each) => {
      expect(drillSchema.parse(each)).toEqual(each);
      expect(parseDrill(JSON.stringify(each))).toEqual({ ok: true, drill: each });
    },
  );

  it.each([
    ["a comma is missing", text.replace('"flat-to-steep",', '"flat-to-steep"'), /not JSON: line 8, comma expected/],
    [
      "an unknown band",
      text.replace('"band": "ball-line"', '"band": "balls-line"'),
      /line 12, field checkpoints\.0\.wanted\.band/,
    ],
    [
      "a text for a number",
      text.replace('"offset": -0.05', '"offset": "5 cm"'),
      /line 40, field checkpoints\.2\.wanted\.from\.offset/,
    ],
    ["a name is missing", text.replace(/ {2}"name".*\n/, ""), /line 1, field name/],
    ["a field too many", text.replace('"format"', '"colour": "red",\n  "format"'), /field \(the whole file\).*colour/],
    [
      "a checkpoint twice",
      text.replace('"shaft-level-back"', '"takeaway"'),
      /field checkpoints: names a checkpoint twice/,
    ],
    ["nothing at all", "", /not JSON: line 1/],
  ])("P2 refused with line and field: %s", (_, spoilt, sentence) => {
    expect(spoilt).not.toBe(text);
    const parsed = parseDrill(spoilt);
    expect(parsed).toMatchObject({ ok: false, why: expect.stringMatching(sentence) as string });
  });

  it("P3 nothing that a built-in drill says names a part of the body", () => {
    const said = builtInDrills.flatMap((each) => [...each.say, ...each.checkpoints.map(({ say }) => say)]);
    expect(said.length).toBeGreaterThan(10);
    const body =
      /\b(hands?|wrists?|arms?|elbows?|shoulders?|hips?|knees?|feet|foot|spine|chest|chin|eyes?|body|legs?|your head)\b/i;
    expect(said.filter((sentence) => body.test(sentence))).toEqual([]);
  });

  it("P4 stretches lie where the sticks lie, the outer bands as long as a shoe", () => {
    const heel = resolveStretch({ band: "heel-line" }, layout);
    expect(heel.from).toBeCloseTo(0.825, 12);
    expect(heel.to).toBeCloseTo(0.925, 12);
    const beyond = resolveStretch({ band: "beyond-ball" }, layout);
    expect(beyond.from).toBeCloseTo(-0.35, 12);
    expect(beyond.to).toBeCloseTo(-0.05, 12);
    const between = resolveStretch(
      { from: { line: "toe-line", offset: 0.1 }, to: { line: "ball-line", offset: -0.1 } },
      layout,
    );
    expect(between.from).toBeCloseTo(-0.1, 12);
    expect(between.to).toBeCloseTo(0.675, 12);
    expect(middleOf(between)).toBeCloseTo(0.2875, 12);
  });
});
