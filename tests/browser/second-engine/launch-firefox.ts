import puppeteer, { type Browser } from "puppeteer-core";
import { findProgram, isProgram } from "../../../client-capture/measure/find-program.ts";

/**
 * The second engine: Firefox over WebDriver BiDi (W3C), which Playwright cannot drive in the build that a distribution
 * ships. The browser tests proper run in Chromium; here it is seen that nothing hangs on that engine.
 */

const commandNames = ["firefox-esr", "firefox", "firefox.exe"];
const usualPlaces = [
  "/usr/bin/firefox-esr",
  "/usr/bin/firefox",
  "/Applications/Firefox.app/Contents/MacOS/firefox",
  "C:\\Program Files\\Mozilla Firefox\\firefox.exe",
];

/** The path of an installed Firefox: OVERCUE_FIREFOX where that is set, else one on the PATH or in a usual place; null where there is none. */
export async function findFirefox(): Promise<string | null> {
  const asked = process.env["OVERCUE_FIREFOX"] ?? "";
  if (asked === "") return await findProgram(commandNames, usualPlaces);
  return (await isProgram(asked)) ? asked : null;
}

/** A fresh Firefox without a window that takes the relay's own certificate. Whoever launches it closes it. */
export async function launchFirefox(executablePath: string): Promise<Browser> {
  return await puppeteer.launch({
    browser: "firefox",
    executablePath,
    headless: true,
    acceptInsecureCerts: true,
  });
}
