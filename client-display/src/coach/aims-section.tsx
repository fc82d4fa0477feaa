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
  /** Resolves when the practice has answered, and the change has arrived here where it was taken. */
  readonly ask: (command: PracticeCommand) => Promise<unknown>;
}

/** How far the coach has moved the slider, metres; told: the practice has yet to answer. */
interface Draft {
  readonly metres: number;
  readonly told: boolean;
}

/** One checkpoint at a time: its bands on the ground, the last reps, and how far to exaggerate. */
export function AimsSection({ practice, reps, ask }: AimsSectionProps) {
  const [chosen, setChosen] = useState<CheckpointId | null>(null);
  const [draft, setDraft] = useState<Draft | null>(null);
  const exaggerated = practice.aims.find(({ exaggerateBy }) => exaggerateBy !== 0);
  const aim = practice.aims.find(({ checkpoint }) => checkpoint === chosen) ?? exaggerated ?? practice.aims[0];
  if (aim === undefined) return <p>This drill has no checkpoint yet.</p>;
  const tell = (): void => {
    if (draft === null || draft.told) return;
    const { metres } = draft;
    if (metres === aim.exaggerateBy) {
      setDraft(null);
      return;
    }
    const told = { metres, told: true };
    setDraft(told);
    // Until then the slider stays where it was put: the next step starts from there.
    void ask({ do: "set-exaggeration", checkpoint: aim.checkpoint, metres }).then(() => {
      setDraft((now) => (now === told ? null : now));
    });
  };
  const drawn = draft === null ? aim : draftAim(aim, draft.metres, layoutOf(practice));
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
        onDraft={(metres) => {
          setDraft({ metres, told: false });
        }}
        onDone={tell}
      />
      <label className="chip">
        <input
          type="checkbox"
          checked={practice.cueLocked}
          onChange={(event) => {
            void ask({ do: "lock-cue", locked: event.target.checked });
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
              void ask({ do: "accept-proposal" });
            }}
          >
            Take it
          </button>
          <button
            type="button"
            onClick={() => {
              void ask({ do: "decline-proposal" });
            }}
          >
            Keep as it is
          </button>
        </div>
      )}
    </section>
  );
}
