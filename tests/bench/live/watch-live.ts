import type { CaptureState } from "@overcue/shared-geometry/wire/hello";
import { launchChromium } from "../../browser/chromium.ts";
import { press, screen, startCamera } from "../../browser/capture/phone-views.ts";
import { deliveredByCamera, keepCameraTrack } from "../../browser/capture/camera-track.ts";
import { heardOf, joinRelay } from "../../relay/join-relay.ts";
import { startRelay } from "../../relay/start-relay.ts";

export interface WatchedLive {
  readonly screen: "live" | "practice";
  /** By the track's own count. */
  readonly delivered: number;
  /** By the phone's count, as it tells the relay. */
  readonly looked: number;
  readonly missed: number;
  /** Share of the times asked, four a second. */
  readonly tracked: number;
  readonly poses: number;
}

/** Opens the phone's page on that film as its camera and counts pictures for so many seconds on each screen. */
export async function watchLive(film: string, seconds: number): Promise<WatchedLive[]> {
  const browser = await launchChromium({ fakeCamera: film });
  const relay = await startRelay();
  const coach = await joinRelay(relay.origin, "coach", { secret: relay.application.secret });
  try {
    const page = await (
      await browser.newContext({ ignoreHTTPSErrors: true, viewport: { width: 390, height: 844 } })
    ).newPage();
    await keepCameraTrack(page);
    await page.goto(relay.page("capture"));
    await startCamera(page);
    await press(page, "Read, at: Range");
    await page.locator('.findings .mark-good:has-text("Shaft found")').waitFor({ timeout: 120_000 });
    const state = (): CaptureState => {
      const told = heardOf(coach, "captureState").at(-1) as CaptureState | undefined;
      if (told === undefined) throw new Error("The phone has not told how it is.");
      return told;
    };
    /** The phone's count is a second old at most; the track's is taken as the phone's next one comes. */
    const counts = async () => {
      const before = heardOf(coach, "captureState").length;
      while (heardOf(coach, "captureState").length === before) await pause(5);
      const { lookedFrames = 0, missedFrames = 0, posesPerSecond } = state();
      return { delivered: await deliveredByCamera(page), lookedFrames, missedFrames, posesPerSecond };
    };
    const watch = async (which: WatchedLive["screen"]): Promise<WatchedLive> => {
      await pause(3000);
      const from = await counts();
      const estimates = heardOf(coach, "estimate").length;
      await pause(1000 * seconds);
      const to = await counts();
      const heard = heardOf(coach, "estimate").slice(estimates) as { readonly shaft: { readonly status: string } }[];
      return {
        screen: which,
        delivered: to.delivered - from.delivered,
        looked: to.lookedFrames - from.lookedFrames,
        missed: to.missedFrames - from.missedFrames,
        tracked: heard.filter(({ shaft }) => shaft.status === "tracked").length / heard.length,
        poses: to.posesPerSecond,
      };
    };
    const live = await watch("live");
    await press(page, "Practise");
    await screen(page, "practice");
    return [live, await watch("practice")];
  } finally {
    await browser.close();
    coach.socket.close();
    await relay.close();
  }
}

const pause = (milliseconds: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, milliseconds));
