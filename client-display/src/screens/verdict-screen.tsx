import type { PracticeState, Verdict } from "@overcue/shared-geometry/wire/practice";
import { useRef } from "react";
import { fitVerdict } from "../sizes/fit-verdict.ts";
import { viewingOf } from "../store/display-settings.ts";
import { briefCheckpoint } from "../words/heading.ts";
import { stageNames } from "../words/stage-names.ts";
import { useScreen, useSettings } from "./parts.ts";
import { StripMarkPicture } from "./strip-mark.tsx";
import { useElementSize } from "./use-element-size.ts";
import { correctedIn, stripWords, verdictMarks, type StripItem } from "./verdict-marks.ts";

export interface VerdictScreenProps {
  readonly practice: PracticeState;
  readonly verdict: Verdict;
}

/** After the rep: the answer and the next cue in a sentence, the strip of checkpoints, how many reps. */
export function VerdictScreen({ practice, verdict }: VerdictScreenProps) {
  const settings = useSettings((all) => all);
  const root = useRef<HTMLElement>(null);
  const size = useElementSize(root);
  const lines = inLines(verdict.sentence);
  const checkpoints = useScreen((state) => state.checkpoints);
  const strip = verdictMarks(practice.aims, verdict, correctedIn(checkpoints, verdict.repId));
  const count = `${practice.repsInBlock} of ${practice.blockSize} · ${stageNames[practice.stage]} ${practice.repsInStage}`;
  const sizes =
    size === null
      ? null
      : fitVerdict(size, viewingOf(settings), {
          lines: lines.map(({ length }) => length),
          labels: strip.map((item) => stripLabel(item).length),
          count: count.length,
        });
  return (
    <main
      className="verdict"
      data-screen="verdict"
      data-sizes-met={sizes?.meetsRule}
      ref={root}
      style={{ fontSize: sizes?.mustRead ?? 16 }}
    >
      <h1 className="unseen">After the rep</h1>
      <p className="verdict-sentence" role="status">
        {lines.map((line) => (
          <span key={line}>{line} </span>
        ))}
      </p>
      <ul className="strip" aria-label="Checkpoints">
        {strip.map((item) => (
          <li key={item.checkpoint} style={{ "--mark": `${sizes?.mark ?? 30}px` } as React.CSSProperties}>
            <StripMarkPicture mark={item.mark} />
            <span>{stripLabel(item)}</span>
            <span className="unseen">{stripWords[item.mark]}</span>
          </li>
        ))}
      </ul>
      <p className="rep-count">{count}</p>
    </main>
  );
}

/** One thing a line. */
const inLines = (sentence: string): readonly string[] => sentence.split(/(?<=[.!?])\s+/);

/** A checkpoint that was told otherwise while it happened says so. */
function stripLabel({ checkpoint, corrected }: StripItem): string {
  const label = briefCheckpoint(checkpoint);
  return corrected ? `${label}, corrected` : label;
}
