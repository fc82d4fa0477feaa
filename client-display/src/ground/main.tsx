import "@overcue/shared-geometry/wire/no-run-time-code";
import "@fontsource/barlow-semi-condensed/latin-500.css";
import "@fontsource/barlow-semi-condensed/latin-700.css";
import "../theme/base.css";
import "../theme/practice.css";
import "../theme/pairing.css";
import "../theme/panel.css";
import "../theme/session.css";
import { startPage } from "../screens/start-page.tsx";
import { GroundScreen } from "./ground-screen.tsx";

startPage("display", "ground screen", <GroundScreen />);
