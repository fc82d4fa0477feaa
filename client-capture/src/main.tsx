import "@overcue/shared-geometry/wire/no-run-time-code";
import "@fontsource/barlow-semi-condensed/latin-500.css";
import "@fontsource/barlow-semi-condensed/latin-700.css";
import "./page/phone.css";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import { PhonePage } from "./page/phone-page.tsx";
import { PhoneContext } from "./page/use-phone.ts";
import { startPhone } from "./session/start-phone.ts";

const place = document.getElementById("page");
if (place === null) throw new Error("index.html has no place for the page");
const phone = await startPhone();
createRoot(place).render(
  <StrictMode>
    <PhoneContext value={phone}>
      <PhonePage />
    </PhoneContext>
  </StrictMode>,
);
