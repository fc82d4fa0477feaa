export { launchChromium } from "../../client-capture/measure/chromium.ts";
