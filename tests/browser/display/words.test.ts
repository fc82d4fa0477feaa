import { bandIds } from "@overcue/shared-geometry/bands";
import { checkpointIds } from "@overcue/shared-geometry/checkpoints";
import { widestKeyLine } from "@overcue/client-display/sizes/layout-practice";
import { shortBand, bandLines } from "@overcue/client-display/words/band-words";
import { calibrationWords } from "@overcue/client-display/words/calibration-words";
import { shortCheckpoint } from "@overcue/client-display/words/heading";
import { heldWords } from "@overcue/client-display/words/held-words";
import { shaftReasonWords, undefinedReasonWords } from "@overcue/client-display/words/reasons";
import { expect, test } from "vitest";
import { practiceState } from "../../fakes/practice-scenes.ts";
import { startScriptedRelay } from "../../fakes/scripted-relay.ts";
import { launchChromium } from "../chromium.ts";
import { builtPages } from "./pages-folder.ts";

const held = [
  { mode: "baseline" },
  { mode: "retention-test" },
  { paused: true },
  { view: "quiet" },
  { nextRepAnswered: false },
] as const;
/** Every line that may stand beside the ground: at full size, and at half the size with its weight. */
const lines = [
  ...bandIds.flatMap((band) => bandLines[band].map((text) => ({ text, weight: 700, size: 1 }))),
  ...bandIds.map((band) => ({ text: `or ${shortBand(band)}`, weight: 500, size: 0.5 })),
  ...checkpointIds.map((id) => ({ text: shortCheckpoint[id], weight: 700, size: 0.5 })),
  ...[...Object.values(shaftReasonWords), ...Object.values(undefinedReasonWords)].map((text) => ({
    text,
    weight: 500,
    size: 0.5,
  })),
  ...held.flatMap((changes) =>
    (heldWords(practiceState(changes), 1) ?? "").split("\n").map((text) => ({ text, weight: 500, size: 0.5 })),
  ),
  ...Object.values(calibrationWords).map((text) => ({ text, weight: 700, size: 0.5 })),
  ...["butt pointed at", "butt points at", "head was over"].map((text) => ({ text, weight: 500, size: 0.5 })),
];
/** Left and right of the words, in key words' font sizes (0.55 of the half-size font). */
const margins = 0.275;

test("D4 no line beside the ground is wider than its place", async () => {
  const browser = await launchChromium();
  const relay = await startScriptedRelay({ pages: builtPages() });
  try {
    const page = await browser.newPage();
    await page.goto(`${relay.origin}/ground/`);
    const widths = await page.evaluate(async (all) => {
      await Promise.all([500, 700].map((weight) => document.fonts.load(`${weight} 100px "Barlow Semi Condensed"`)));
      const context = document.createElement("canvas").getContext("2d");
      if (context === null) throw new Error("no canvas");
      return all.map(({ text, weight, size }) => {
        context.font = `${weight} 100px "Barlow Semi Condensed"`;
        return { text, width: (context.measureText(text).width / 100) * size };
      });
    }, lines);
    expect(widths.filter(({ width }) => width + margins > widestKeyLine)).toEqual([]);
    expect(Math.max(...widths.map(({ width }) => width))).toBeGreaterThan(2);
  } finally {
    await browser.close();
    await relay.close();
  }
});
