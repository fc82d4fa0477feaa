import "@overcue/shared-geometry/wire/no-run-time-code";
import "@fontsource/barlow-semi-condensed/latin-500.css";
import "@fontsource/barlow-semi-condensed/latin-700.css";
import "../theme/base.css";
import "../theme/panel.css";
import "../theme/coach.css";
import { startPage } from "../screens/start-page.tsx";
import { CoachScreen } from "./coach-screen.tsx";

startPage("coach", "coach", <CoachScreen />);
