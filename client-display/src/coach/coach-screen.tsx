import type { PracticeCommand } from "@overcue/shared-geometry/wire/practice";
import { useCallback } from "react";
import { LinkTrouble } from "../screens/link-trouble.tsx";
import { Notice } from "../screens/notice.tsx";
import { useParts, useScreen } from "../screens/parts.ts";
import { useSessionView } from "../screens/use-session-view.ts";
import { peersSentence } from "../words/peers-sentence.ts";
import { AimsSection } from "./aims-section.tsx";
import { NameField } from "./name-field.tsx";
import { NoteSection } from "./note-section.tsx";
import { PlanSection } from "./plan-section.tsx";
import { RepsSection } from "./reps-section.tsx";

/** The coach's handheld. Several may be there: the last change holds, and everybody reads whose it was. */
export function CoachScreen() {
  const { link, ui } = useParts();
  const linkState = useScreen((state) => state.link);
  const peers = useScreen((state) => state.peers);
  const practice = useScreen((state) => state.practice);
  const view = useSessionView();
  const askAndTell = useCallback(
    async (command: PracticeCommand): Promise<boolean> => {
      const refusal = await link.ask(command);
      ui.setState({ notice: refusal });
      return refusal === null;
    },
    [link, ui],
  );
  const ask = useCallback(
    (command: PracticeCommand): void => {
      void askAndTell(command);
    },
    [askAndTell],
  );
  if (linkState.kind === "refused" || linkState.kind === "unpaired") return <LinkTrouble link={linkState} />;
  return (
    <>
      <LinkTrouble link={linkState} />
      <main className="coach" data-screen="coach">
        <h1>{practice === null ? "Coach" : `${practice.golfer.name}: ${practice.drill.name}`}</h1>
        <p className="coach-status" role="status">
          {peersSentence(peers)}
        </p>
        <NameField />
        {practice !== null && practice.lastChange !== null && (
          <p className="last-change" role="status">
            {practice.lastChange.by}: {practice.lastChange.what}
          </p>
        )}
        {practice === null ? (
          <p>Waiting for the practice…</p>
        ) : (
          <div className="coach-columns">
            <AimsSection practice={practice} reps={view?.reps ?? []} ask={askAndTell} />
            <PlanSection practice={practice} ask={ask} />
            <RepsSection reps={view?.reps ?? []} ask={ask} />
            <NoteSection notes={view?.notes ?? []} ask={askAndTell} />
          </div>
        )}
      </main>
      <Notice />
    </>
  );
}
