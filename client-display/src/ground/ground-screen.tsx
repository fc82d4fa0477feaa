import { useEffect } from "react";
import { listenKeys } from "../actions/listen-keys.ts";
import { CautionsScreen } from "../screens/cautions-screen.tsx";
import { chooseScreen } from "../screens/choose-screen.ts";
import { CodesScreen } from "../screens/codes-screen.tsx";
import { FeltQuestion } from "../screens/felt-question.tsx";
import { HelpScreen } from "../screens/help-screen.tsx";
import { LinkTrouble } from "../screens/link-trouble.tsx";
import { MenuScreen } from "../screens/menu-screen.tsx";
import { Notice } from "../screens/notice.tsx";
import { PairingScreen } from "../screens/pairing-screen.tsx";
import { useParts, useScreen, useSettings, useUi } from "../screens/parts.ts";
import { PracticeScreen } from "../screens/practice-screen.tsx";
import { SessionScreen } from "../screens/session-screen.tsx";
import { SettingsScreen } from "../screens/settings-screen.tsx";
import { useWindowSize } from "../screens/use-window-size.ts";
import { fitSentence } from "../sizes/fit-sentence.ts";
import { viewingOf } from "../store/display-settings.ts";
import { SetUpScreen } from "../screens/set-up-screen.tsx";
import { VerdictScreen } from "../screens/verdict-screen.tsx";

/** A message may cover this share of the screen's height for its few seconds. */
const messageShare = 0.45;

/** The ground screen: what the golfer needs now, and above it what the relay has to say. */
export function GroundScreen() {
  const parts = useParts();
  const link = useScreen((state) => state.link);
  const size = useWindowSize();
  const settings = useSettings((all) => all);
  useEffect(() => listenKeys(parts), [parts]);
  const fontFor = (letters: number): number => fitSentence(size, viewingOf(settings), letters, messageShare);
  return (
    <>
      {link.kind === "lost" && <LinkTrouble link={link} fontFor={fontFor} />}
      <Front />
      <Notice fontFor={fontFor} />
    </>
  );
}

function Front() {
  const link = useScreen((state) => state.link);
  const phones = useScreen((state) => state.peers?.capture ?? 0);
  const source = useScreen((state) => state.capture?.source ?? "none");
  const view = useScreen((state) => state.practice?.view ?? "live");
  const cautionsRead = useSettings((settings) => settings.cautionsRead);
  const setUpDone = useUi((state) => state.setUpDone);
  const overlay = useUi((state) => state.overlay);
  const screen = chooseScreen({ link, phones, source, cautionsRead, setUpDone, view });
  if (screen === "trouble") return <LinkTrouble link={link} />;
  switch (overlay) {
    case "menu":
      return <MenuScreen />;
    case "settings":
      return <SettingsScreen />;
    case "help":
      return <HelpScreen />;
    case "codes":
      return <CodesScreen />;
    case "set-up":
      return <SetUpScreen />;
    case "none":
  }
  switch (screen) {
    case "pairing":
      return <PairingScreen />;
    case "cautions":
      return <CautionsScreen />;
    case "set-up":
      return <SetUpScreen />;
    case "session":
      return <SessionScreen />;
    case "practice":
      return <Practice />;
  }
}

/** The live ground, or in front of it the question what it felt like, or the answer to the last rep. */
function Practice() {
  const practice = useScreen((state) => state.practice);
  const verdictShown = useUi((state) => state.verdictShown);
  if (practice !== null && practice.feltAnswerWanted !== null && practice.feltAnswerCheckpoint !== null) {
    return <FeltQuestion repId={practice.feltAnswerWanted} checkpoint={practice.feltAnswerCheckpoint} />;
  }
  if (practice !== null && practice.verdict !== null && practice.verdict.repId === verdictShown) {
    return <VerdictScreen practice={practice} verdict={practice.verdict} />;
  }
  return <PracticeScreen />;
}
