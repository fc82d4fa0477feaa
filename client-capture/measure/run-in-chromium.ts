import { launchChromium } from "./chromium.ts";
import { serveJob, type Job } from "./serve-job.ts";

/** Opens the page that does the job in a headless Chromium, passes its messages on, and hands back what it answers. */
export async function runInChromium(job: Job, onMessage: (text: string) => void): Promise<unknown> {
  const served = await serveJob(job);
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    const ended = new Promise<never>((_, reject) => {
      page.on("crash", () => {
        reject(new Error("The browser's page ran out of memory or crashed: try a shorter clip."));
      });
      page.on("pageerror", (error) => {
        reject(new Error(`The page failed: ${error.message}`));
      });
      browser.on("disconnected", () => {
        reject(new Error("The browser was closed before the clip was measured."));
      });
    });
    page.on("console", (message) => {
      if (message.type() === "info" || message.type() === "warning") onMessage(message.text());
    });
    await page.goto(served.url);
    return JSON.parse(await Promise.race([served.answer, ended])) as unknown;
  } finally {
    served.close();
    await browser.close();
  }
}
