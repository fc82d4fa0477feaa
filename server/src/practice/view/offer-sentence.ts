import type { RetentionKind } from "@overcue/shared-geometry/wire/practice";

/** One sentence that offers the test that is due. */
export function offerSentence(kind: RetentionKind): string {
  return kind === "next-day"
    ? "The day after: five reps without any answer show what stayed overnight. That is the real score."
    : "A week or more later: five reps without any answer show what stayed. That is the real score.";
}
