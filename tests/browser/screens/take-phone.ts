import type { Browser, Page } from "playwright-core";
import { joinRelay } from "../../relay/join-relay.ts";
import { startRelay } from "../../relay/start-relay.ts";
import { phoneSize, takePicture } from "./take-picture.ts";

const patience = { timeout: 120_000 };

/** The trust page, and the phone's views while the demo golfer goes through the real pose model and measurement. */
export async function takePhone(browser: Browser, folder: string): Promise<void> {
  const relay = await startRelay();
  // The phone says whether a ground screen is there.
  const ground = await joinRelay(relay.origin, "display", { secret: relay.application.secret });
  const context = await browser.newContext({ ignoreHTTPSErrors: true, viewport: phoneSize });
  try {
    const trust = await context.newPage();
    await trust.goto(`http://127.0.0.1:${relay.application.httpPort}/`);
    await takePicture(trust, folder, "trust");
    await trust.close();

    const phone = await context.newPage();
    await phone.goto(relay.page("capture"));
    await press(phone, "Nobody here: demo golfer", false);
    await takePicture(phone, folder, "phone-choose");
    await press(phone, "Nobody here: demo golfer");
    await phone.locator('.findings .mark-good:has-text("Shaft found")').waitFor(patience);
    await takePicture(phone, folder, "phone-demo");
    await press(phone, "Set the sticks");
    await phone.locator(".station .handle").first().waitFor(patience);
    await takePicture(phone, folder, "phone-set-up");
    await press(phone, "Back");
    await press(phone, "Practise");
    await phone.waitForSelector("[data-screen=practice]", patience);
    await phone.locator('.status .word:has-text("Seen")').waitFor(patience);
    await takePicture(phone, folder, "phone-practice");
  } finally {
    await context.close();
    ground.socket.close();
    await relay.close();
  }
}

/** Waits for a button, and presses it unless told not to. */
async function press(page: Page, name: string, now = true): Promise<void> {
  const button = page.getByRole("button", { name }).first();
  await button.waitFor(patience);
  if (now) await button.click();
}
