import type { Page } from "playwright-core";

/** Has the page's camera track kept where `deliveredByCamera` finds it; to be called before the page is opened. */
export async function keepCameraTrack(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const media = navigator.mediaDevices;
    const open = media.getUserMedia.bind(media);
    media.getUserMedia = async (wanted) => {
      const stream = await open(wanted);
      Object.assign(globalThis, { cameraTrack: stream.getVideoTracks()[0] });
      return stream;
    };
  });
}

/** How many pictures the camera has delivered to the page, by the browser's own count (W3C mediacapture-extensions). */
export async function deliveredByCamera(page: Page): Promise<number> {
  return await page.evaluate(() => {
    const { cameraTrack } = globalThis as { cameraTrack?: { readonly stats: { readonly deliveredFrames: number } } };
    if (cameraTrack === undefined) throw new Error("The page has not opened its camera.");
    return cameraTrack.stats.deliveredFrames;
  });
}
