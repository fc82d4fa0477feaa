export {
  findChromium,
  launchChromium,
  launchChromiumWithProfile,
  type LaunchOptions,
} from "../../client-capture/measure/chromium.ts";
