import type { BandId } from "@overcue/shared-geometry/bands";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { Estimate } from "@overcue/shared-geometry/wire/estimate";
import { liveSubject } from "../ground-view/live-subject.ts";
import { stalePicture } from "../ground-view/live-on-ground.ts";
import { bandLines, shortBand } from "./band-words.ts";
import { shaftReasonWords, undefinedReasonWords } from "./reasons.ts";

/** What stands in the key word's place. `sure` is one band; `unsure` names two; `none` says why there is no band. */
export type KeyWord =
  | { readonly kind: "sure"; readonly band: BandId; readonly lines: readonly string[] }
  | { readonly kind: "unsure"; readonly bands: readonly [BandId, BandId]; readonly lines: readonly string[] }
  | { readonly kind: "none"; readonly lines: readonly string[] };

/** The reason in place of a word; a line break in it starts a new line. */
export const noWord = (words: string): KeyWord => ({ kind: "none", lines: words.split("\n") });

/** The word for an estimate. `age`: milliseconds since its picture was taken; null where the clocks are not matched yet. */
export function keyWordOf(estimate: Estimate | null, age: number | null, aimedAt: CheckpointId | null): KeyWord {
  if (estimate === null) return noWord("no picture yet");
  if (age !== null && age > stalePicture) return noWord("picture is late");
  if (estimate.shaft.status === "lost") return noWord(shaftReasonWords[estimate.shaft.reason]);
  const { readOut } = liveSubject(estimate.readOuts, aimedAt);
  if (!readOut.defined) return noWord(undefinedReasonWords[readOut.reason]);
  return decidedWord(readOut.band);
}

export function decidedWord(decision: Extract<Estimate["readOuts"]["buttPoint"], { defined: true }>["band"]): KeyWord {
  if (decision.decided) return { kind: "sure", band: decision.band, lines: bandLines[decision.band] };
  const [first, second] = decision.candidates;
  return {
    kind: "unsure",
    bands: [first, second],
    lines: ["unsure:", shortBand(first), `or ${shortBand(second)}`],
  };
}

/** Two key words that read the same. */
export function sameWord(a: KeyWord, b: KeyWord): boolean {
  return (
    a.kind === b.kind && a.lines.length === b.lines.length && a.lines.every((line, index) => line === b.lines[index])
  );
}
