import { checkpointLabels, type CheckpointId } from "@overcue/shared-geometry/checkpoints";
import type { PracticeCommand, PracticeState, SessionView } from "@overcue/shared-geometry/wire/practice";
import { useState } from "react";
import { RadioRow } from "../screens/radio-row.tsx";
import { layoutOf } from "../screens/use-ground-scene.ts";
import { shortCheckpoint } from "../words/heading.ts";
import { AimSlider } from "./aim-slider.tsx";
import { draftAim } from "./draft-aim.ts";
import { ReviewGround } from "./review-ground.tsx";

export interface AimsSectionProps {
  readonly practice: PracticeState;
  readonly reps: SessionView["reps"];
  readonly ask: (command: PracticeCommand) => void;
}

/** One checkpoint at a time: its bands on the ground, the last reps, and how far to exaggerate. */
export function AimsSection({ practice, reps, ask }: AimsSectionProps) {
  const [chosen, setChosen] = useState<CheckpointId | null>(null);
  const [draft, setDraft] = useState<number | null>(null);
  const exaggerated = practice.aims.find(({ exaggerateBy }) => exaggerateBy !== 0);
  const aim = practice.aims.find(({ checkpoint }) => checkpoint === chosen) ?? exaggerated ?? practice.aims[0];
  if (aim === undefined) return <p>This drill has no checkpoint yet.</p>;
  const drawn = draft === null ? aim : draftAim(aim, draft, layoutOf(practice));
  return (
    <section>
      <h2>Exaggerate by</h2>
      <RadioRow
        legend="Checkpoint"
        name="checkpoint"
        value={aim.checkpoint}
        options={practice.aims.map(({ checkpoint }) => ({ value: checkpoint, label: shortCheckpoint[checkpoint] }))}
        onChange={(checkpoint) => {
          setChosen(checkpoint);
          setDraft(null);
        }}
      />
      <ReviewGround practice={practice} aim={drawn} reps={reps} />
      <AimSlider
        aim={drawn}
        draft={drawn.exaggerateBy}
        locked={practice.cueLocked}
        onDraft={setDraft}
        onDone={() => {
          if (draft !== null && draft !== aim.exaggerateBy) {
            ask({ do: "set-exaggeration", checkpoint: aim.checkpoint, metres: draft });
          }
          setDraft(null);
        }}
      />
      <label className="chip">
        <input
          type="checkbox"
          checked={practice.cueLocked}
          onChange={(event) => {
            ask({ do: "lock-cue", locked: event.target.checked });
          }}
        />
        Lock the cue
      </label>
      {practice.proposals.map((proposal) => (
        <div key={proposal.checkpoint} className="proposal">
          <p>
            Proposed at {checkpointLabels[proposal.checkpoint]}: {proposal.reason}
          </p>
        </div>
      ))}
      {practice.proposals.length > 0 && (
        <div className="buttons">
          <button
            type="button"
            onClick={() => {
              ask({ do: "accept-proposal" });
            }}
          >
            Take it
          </button>
          <button
            type="button"
            onClick={() => {
              ask({ do: "decline-proposal" });
            }}
          >
            Keep as it is
          </button>
        </div>
      )}
    </section>
  );
}
