import { StationScreen } from "../setup/station-screen.tsx";
import { CautionsScreen } from "./cautions-screen.tsx";
import { ChooseScreen } from "./choose-screen.tsx";
import { HelpScreen } from "./help-screen.tsx";
import { LiveScreen } from "./live-screen.tsx";
import { PracticeScreen } from "./practice-screen.tsx";
import { usePhoneState } from "./use-phone.ts";

export function PhonePage() {
  const screen = usePhoneState((state) => state.screen);
  switch (screen) {
    case "choose":
      return <ChooseScreen />;
    case "cautions":
      return <CautionsScreen />;
    case "live":
      return <LiveScreen />;
    case "station":
      return <StationScreen />;
    case "practice":
      return <PracticeScreen />;
    case "help":
      return <HelpScreen />;
  }
}
