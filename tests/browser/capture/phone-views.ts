import type { Page } from "playwright-core";

/** A view of the phone's page, and how it is reached from the one before. */
export interface PhoneView {
  readonly name: string;
  readonly open: (page: Page) => Promise<void>;
}

const press = (name: string) => async (page: Page) => {
  await page.getByRole("button", { name }).first().click();
};

const screen = async (page: Page, name: string): Promise<void> => {
  await page.waitForSelector(`[data-screen=${name}]`, { timeout: 120_000 });
};

/** Every view, in the order in which somebody who sets up for the first time walks through them; the camera shows a golfer at address. */
export const phoneViews: readonly PhoneView[] = [
  {
    name: "choose",
    open: async (page) => {
      await screen(page, "choose");
    },
  },
  {
    name: "help",
    open: async (page) => {
      await press("Help, place and cautions")(page);
      await screen(page, "help");
    },
  },
  {
    name: "cautions",
    open: async (page) => {
      await press("Back")(page);
      await press("In front of this phone")(page);
      await screen(page, "cautions");
    },
  },
  {
    name: "set-up",
    open: async (page) => {
      await press("Read, at: Range")(page);
      await screen(page, "live");
      await page.locator('.findings .mark-good:has-text("Shaft found")').waitFor({ timeout: 120_000 });
    },
  },
  {
    name: "set-up-list",
    open: async (page) => {
      await page.locator(".set-up summary").click();
      await page.locator(".more summary").click();
    },
  },
  {
    name: "rod",
    open: async (page) => {
      await page.locator(".set-up summary").click();
      await page.locator(".more summary").click();
      await press("Space is clear")(page).catch(() => undefined);
      await page.evaluate(() => undefined);
    },
  },
  {
    name: "station",
    open: async (page) => {
      await press("Set the sticks")(page);
      await page.locator(".station .handle").first().waitFor();
    },
  },
  {
    name: "practice",
    open: async (page) => {
      await press("Back")(page);
      await press("Practise")(page);
      await screen(page, "practice");
      await page.locator('.status .word:has-text("Seen")').waitFor({ timeout: 60_000 });
    },
  },
];
