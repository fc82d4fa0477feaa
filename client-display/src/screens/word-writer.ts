import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import type { PracticeState } from "@overcue/shared-geometry/wire/practice";
import { cautionWords } from "../words/calibration-words.ts";
import { headingFor, shortCheckpoint } from "../words/heading.ts";
import type { KeyWord } from "../words/key-word.ts";

export interface WrittenWords {
  readonly word: KeyWord | null;
  readonly estimate: Estimate | null;
  readonly age: number | null;
  /** The checkpoint that the word is about: the one just passed, else the one aimed at. */
  readonly moment: CheckpointId | null;
  readonly passed: boolean;
  /** No live word is to be shown now: nothing is said about the club. */
  readonly withheld: boolean;
  readonly practice: PracticeState | null;
}

/** Writes the words of the practice view into its elements, touching the page only where a text changed. */
export function wordWriter(root: HTMLElement): (words: WrittenWords) => void {
  const part = (name: string): HTMLElement | null => root.querySelector(`[data-part="${name}"]`);
  const momentPart = part("moment");
  const heading = part("heading");
  const keyWord = part("key-word");
  const calibration = part("calibration");
  const status = part("status");
  let delayShown = "";
  let delayShownAt = -Infinity;

  return ({ word, estimate, age, moment, passed, withheld, practice }) => {
    if (root.dataset["withheld"] !== String(withheld)) root.dataset["withheld"] = String(withheld);
    setText(momentPart, moment === null ? "" : shortCheckpoint[moment]);
    setText(heading, withheld ? "" : headingFor(estimate, moment, passed));
    if (keyWord !== null) {
      const lines = word?.lines ?? [];
      if (keyWord.dataset["lines"] !== lines.join("|")) {
        keyWord.dataset["lines"] = lines.join("|");
        keyWord.dataset["kind"] = word?.kind ?? "between";
        keyWord.dataset["band"] = word?.kind === "sure" ? word.band : "";
        keyWord.replaceChildren(
          ...lines.map((line) => Object.assign(document.createElement("span"), { textContent: line })),
        );
      }
    }
    setText(calibration, estimate === null ? "" : cautionWords(estimate.calibration, practice));
    // A number that changes at every picture cannot be read: the delay is renewed twice a second.
    const now = performance.now();
    if (now - delayShownAt > 500) {
      delayShown = age === null ? "delay unknown" : `${Math.max(0, Math.round(age))} ms`;
      delayShownAt = now;
    }
    if (status !== null) {
      const hands = estimate?.hands ?? "lost";
      const shaft = estimate?.shaft.status ?? "lost";
      setText(status, `hands ${hands} · shaft ${shaft} · ${delayShown}`);
    }
  };
}

function setText(element: HTMLElement | null, text: string): void {
  if (element !== null && element.textContent !== text) element.textContent = text;
}
