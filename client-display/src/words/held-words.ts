import type { PracticeState } from "@overcue/shared-geometry/wire/practice";

/** Why no live word is shown although the phone measures; null where it may be shown. */
export function heldWords(practice: PracticeState | null, phones: number): string | null {
  if (phones === 0) return "phone away";
  if (practice === null) return null;
  if (practice.paused) return "paused";
  if (practice.mode === "baseline") return baselineWords(practice);
  if (practice.mode === "retention-test") return "test:\nno answers";
  if (practice.view === "quiet") return "answers only";
  return practice.nextRepAnswered ? null : "silent rep";
}

/** The rep that comes next is the one named, until the last is done. */
function baselineWords({ repsInBlock, blockSize }: PracticeState): string {
  return `baseline:\nrep ${Math.min(repsInBlock + 1, blockSize)} of ${blockSize}\nno feedback`;
}
