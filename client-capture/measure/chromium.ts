import { chromium, type Browser } from "playwright-core";
import { findProgram, isProgram } from "./find-program.ts";

/** The one place that knows where a Chromium is and how to start it. */

const commandNames = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome.exe"];

const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/opt/google/chrome/chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
];

/** `--disable-gpu` leaves WebGL2 to the software renderer, which the pose model needs; never switch that off too. */
const quietFlags = [
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // A page nobody looks at is measured all the same.
  "--disable-background-timer-throttling",
  "--disable-renderer-backgrounding",
  "--disable-backgrounding-occluded-windows",
];

/**
 * The path of an installed Chromium or Chrome: OVERCUE_CHROMIUM where that is set, else one on the PATH, else one of the
 * usual places. @throws Error with a sentence that says what to install.
 */
export async function findChromium(): Promise<string> {
  const asked = process.env["OVERCUE_CHROMIUM"];
  if (asked !== undefined && asked !== "") {
    if (await isProgram(asked)) return asked;
    throw new Error(`OVERCUE_CHROMIUM names ${asked}, which is no program here: correct it or unset it.`);
  }
  const found = await findProgram(commandNames, usualPlaces);
  if (found !== null) return found;
  throw new Error(
    "No Chromium or Chrome found: install one (Debian and Ubuntu: apt install chromium) or name it in OVERCUE_CHROMIUM.",
  );
}

export interface LaunchOptions {
  /** A .y4m or .mjpeg file that plays, over and over, as the camera; the permission is given unasked. */
  readonly fakeCamera?: string;
  readonly extraFlags?: readonly string[];
  /** Shown on a screen for looking by hand. */
  readonly visible?: boolean;
}

/** A fresh, quiet Chromium without a profile of its own. Whoever launches it closes it. */
export async function launchChromium(options: LaunchOptions = {}): Promise<Browser> {
  return await chromium.launch({
    executablePath: await findChromium(),
    headless: options.visible !== true,
    args: [...flagsFor(options)],
  });
}

function flagsFor({ fakeCamera, extraFlags = [] }: LaunchOptions): readonly string[] {
  const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  const camera =
    fakeCamera === undefined
      ? []
      : [
          "--use-fake-device-for-media-stream",
          "--use-fake-ui-for-media-stream",
          `--use-file-for-fake-video-capture=${fakeCamera}`,
        ];
  return [...quietFlags, ...asRoot, ...camera, ...extraFlags];
}
