import { ChooseScreen } from "./choose-screen.tsx";
import { LiveScreen } from "./live-screen.tsx";
import { StationScreen } from "../setup/station-screen.tsx";
import { PracticeScreen } from "./practice-screen.tsx";
import { usePhoneState } from "./use-phone.ts";

export function PhonePage() {
  const screen = usePhoneState((state) => state.screen);
  switch (screen) {
    case "choose":
      return <ChooseScreen />;
    case "live":
      return <LiveScreen />;
    case "station":
      return <StationScreen />;
    case "practice":
      return <PracticeScreen />;
  }
}
