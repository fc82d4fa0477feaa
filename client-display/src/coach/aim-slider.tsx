import { bandLabels } from "@overcue/shared-geometry/bands";
import { checkpointLabels } from "@overcue/shared-geometry/checkpoints";
import type { Aim } from "@overcue/shared-geometry/wire/practice";
import { exaggerationWords } from "./draft-aim.ts";

export interface AimSliderProps {
  readonly aim: Aim;
  /** As the coach is moving it, metres. */
  readonly draft: number;
  readonly locked: boolean;
  readonly onDraft: (metres: number) => void;
  readonly onDone: () => void;
}

/** Exaggerate by, in whole centimetres; told to the practice when the finger or the key lets go. */
export function AimSlider({ aim, draft, locked, onDraft, onDone }: AimSliderProps) {
  const limit = Math.max(60, Math.ceil(Math.abs(aim.cap) * 100) + 20);
  const pastCap = Math.abs(draft) > Math.abs(aim.cap) + 0.005 && draft * aim.cap > 0;
  return (
    <div className="aim-slider">
      <label className="field">
        {checkpointLabels[aim.checkpoint]}: <output>{exaggerationWords(draft)}</output>, feels like{" "}
        <output>{bandLabels[aim.feltBand]}</output>
        <input
          type="range"
          min={-limit}
          max={limit}
          step={1}
          disabled={locked}
          value={Math.round(draft * 100)}
          aria-valuetext={exaggerationWords(draft)}
          onChange={(event) => {
            onDraft(Number(event.target.value) / 100);
          }}
          onPointerUp={onDone}
          onKeyUp={onDone}
          onBlur={onDone}
        />
      </label>
      <p className="aim-scale" aria-hidden="true">
        <span>beyond the ball</span>
        <span>none</span>
        <span>towards the heels</span>
      </p>
      {pastCap && <p>Past the usual limit of {exaggerationWords(aim.cap)}.</p>}
      <p className="reason">{aim.reason}</p>
    </div>
  );
}
