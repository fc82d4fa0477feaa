import { stageIds, type PracticeCommand, type PracticeState } from "@overcue/shared-geometry/wire/practice";
import { RadioRow } from "../screens/radio-row.tsx";
import { stageNames } from "../words/stage-names.ts";

export interface PlanSectionProps {
  readonly practice: PracticeState;
  readonly ask: (command: PracticeCommand) => void;
}

/** What is practised, in which stage, and what the ground screen shows. */
export function PlanSection({ practice, ask }: PlanSectionProps) {
  return (
    <section>
      <h2>Practice</h2>
      <label className="field">
        Drill
        <select
          value={practice.drill.id}
          onChange={(event) => {
            ask({ do: "set-drill", drillId: event.target.value });
          }}
        >
          {practice.drills.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <p className="coach-status">
        {practice.repsInBlock} of {practice.blockSize} in this block, {practice.repsInStage} in this stage,{" "}
        {practice.repsInSession} today. Rod {practice.rodOn ? "on" : "off"}.
      </p>
      <RadioRow
        legend="Stage"
        name="stage"
        value={practice.stage}
        options={stageIds.map((stage) => ({ value: stage, label: stageNames[stage] }))}
        onChange={(stage) => {
          ask({ do: "set-stage", stage });
        }}
      />
      <RadioRow
        legend="Ground screen"
        name="view"
        value={practice.view}
        options={[
          { value: "live", label: "live" },
          { value: "quiet", label: "quiet" },
          { value: "session", label: "session" },
        ]}
        onChange={(view) => {
          ask({ do: "view", view });
        }}
      />
      <RadioRow
        legend="Answers"
        name="feedback"
        value={practice.feedback}
        options={[
          { value: "every-rep", label: "every rep" },
          { value: "every-second", label: "every second" },
          { value: "summary-of-five", label: "after five" },
          { value: "silent", label: "none" },
        ]}
        onChange={(feedback) => {
          ask({ do: "set-feedback", feedback });
        }}
      />
      <div className="buttons">
        <button
          type="button"
          aria-pressed={practice.paused}
          onClick={() => {
            ask({ do: "pause", paused: !practice.paused });
          }}
        >
          {practice.paused ? "Go on" : "Pause"}
        </button>
        <button
          type="button"
          aria-pressed={practice.muted}
          onClick={() => {
            ask({ do: "mute", muted: !practice.muted });
          }}
        >
          {practice.muted ? "Sound on" : "Mute"}
        </button>
      </div>
      {practice.advice.length > 0 && (
        <ul>
          {practice.advice.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
