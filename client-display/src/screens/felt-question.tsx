import { bandIds, type BandId } from "@overcue/shared-geometry/bands";
import type { CheckpointId } from "@overcue/shared-geometry/checkpoints";
import { useMemo, useRef } from "react";
import { fitChoices } from "../sizes/fit-choices.ts";
import { viewingOf } from "../store/display-settings.ts";
import { shortBand } from "../words/band-words.ts";
import { shortCheckpoint } from "../words/heading.ts";
import { runCommand } from "../actions/run-command.ts";
import { ChoiceList } from "./choice-list.tsx";
import { useParts, useSettings } from "./parts.ts";
import { useElementSize } from "./use-element-size.ts";

export interface FeltQuestionProps {
  readonly repId: string;
  readonly checkpoint: CheckpointId;
}

/** Asked before the answer is shown: guessing one's own error first makes the answer worth more. */
export function FeltQuestion({ repId, checkpoint }: FeltQuestionProps) {
  const parts = useParts();
  const settings = useSettings((all) => all);
  const root = useRef<HTMLElement>(null);
  const size = useElementSize(root);
  const sizes = useMemo(
    () => (size === null ? null : fitChoices(size, viewingOf(settings), bandIds.length + 1)),
    [size, settings],
  );
  const choose = (band: BandId) => () => {
    void runCommand({ do: "answer-felt", repId, checkpoint, band }, parts);
  };
  const skip = (): void => {
    void runCommand({ do: "skip-felt" }, parts);
  };
  return (
    <main
      className="felt-question"
      data-screen="felt-question"
      data-asks-band
      ref={root}
      style={{ fontSize: sizes?.mustRead ?? 20 }}
    >
      <h1>Which band did you feel?</h1>
      <p className="felt-moment">{shortCheckpoint[checkpoint]}</p>
      <ChoiceList
        label="Bands, far to near"
        choices={[
          ...bandIds.map((band) => ({ id: band, label: shortBand(band), onChoose: choose(band) })),
          { id: "skip", label: "skip", onChoose: skip, closes: true },
        ]}
      />
    </main>
  );
}
