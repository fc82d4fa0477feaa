import type { PracticeState, Verdict } from "@overcue/shared-geometry/wire/practice";
import { useRef } from "react";
import { fitVerdict } from "../sizes/fit-verdict.ts";
import { viewingOf } from "../store/display-settings.ts";
import { shortCheckpoint } from "../words/heading.ts";
import { stageNames } from "../words/stage-names.ts";
import { useSettings } from "./parts.ts";
import { StripMarkPicture } from "./strip-mark.tsx";
import { useElementSize } from "./use-element-size.ts";
import { stripWords, verdictMarks } from "./verdict-marks.ts";

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
  const strip = verdictMarks(practice.aims, verdict);
  const count = `${practice.repsInBlock} of ${practice.blockSize} · ${stageNames[practice.stage]} ${practice.repsInStage}`;
  const sizes =
    size === null
      ? null
      : fitVerdict(size, viewingOf(settings), {
          lines: lines.map(({ length }) => length),
          labels: strip.map(({ checkpoint }) => stripLabel(shortCheckpoint[checkpoint]).length),
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
        {strip.map(({ checkpoint, mark }) => (
          <li key={checkpoint} style={{ "--mark": `${sizes?.mark ?? 30}px` } as React.CSSProperties}>
            <StripMarkPicture mark={mark} />
            <span>{stripLabel(shortCheckpoint[checkpoint])}</span>
            <span className="unseen">{stripWords[mark]}</span>
          </li>
        ))}
      </ul>
      <p className="rep-count">{count}</p>
    </main>
  );
}

/** One thing a line. */
const inLines = (sentence: string): readonly string[] => sentence.split(/(?<=[.!?])\s+/);

const stripLabel = (label: string): string => label.replace("arm level ", "").replace("shaft ", "");
