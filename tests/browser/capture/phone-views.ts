import type { Page } from "playwright-core";
import { usualGolfer } from "@overcue/client-capture/demo-motion/demo-golfer-settings";

/** A view of the phone's page, and how it is reached from the one before. */
export interface PhoneView {
  readonly name: string;
  readonly open: (page: Page) => Promise<void>;
}

export const press = async (page: Page, name: string): Promise<void> => {
  await page.getByRole("button", { name, exact: true }).click();
};

export const screen = async (page: Page, name: string): Promise<void> => {
  await page.waitForSelector(`[data-screen=${name}]`, { timeout: 120_000 });
};

/** Asks for the camera, as the phone's first button does. */
export const startCamera = async (page: Page): Promise<void> => {
  await page.getByRole("button", { name: "In front of this phone" }).click();
};

/** Tells the page how far apart the demo golfer's sticks lie. */
export async function measureDistances(page: Page): Promise<void> {
  await page.locator(".station-form summary").click();
  const { toeLine, heelLine } = usualGolfer.station;
  await page.getByLabel("Ball line to toe line, cm").fill(String(100 * toeLine));
  await page.getByLabel("Ball line to heel line, cm").fill(String(100 * heelLine));
  await page.locator(".station-form summary").click();
}

const fold = async (page: Page, part: "set-up" | "more"): Promise<void> => {
  await page.locator(part === "set-up" ? ".set-up summary" : ".more > summary").click();
};

/** Every view, in the order in which somebody who sets up for the first time walks through them; the camera shows a golfer rehearsing. */
export const phoneViews: readonly PhoneView[] = [
  {
    name: "choose",
    open: async (page) => {
      await screen(page, "choose");
      await page.getByText("Paired, no ground screen open").waitFor();
    },
  },
  {
    name: "help",
    open: async (page) => {
      await press(page, "Help, place and cautions");
      await screen(page, "help");
    },
  },
  {
    name: "cautions",
    open: async (page) => {
      await press(page, "Back");
      await startCamera(page);
      await screen(page, "cautions");
    },
  },
  {
    name: "set-up",
    open: async (page) => {
      await press(page, "Read, at: Range");
      await screen(page, "live");
      await page.locator('.findings .mark-good:has-text("Shaft found")').waitFor({ timeout: 120_000 });
    },
  },
  {
    name: "set-up-list",
    open: async (page) => {
      await fold(page, "set-up");
      await fold(page, "more");
      await page.locator("[data-check=rod-colour]").waitFor();
    },
  },
  {
    name: "station",
    open: async (page) => {
      await press(page, "Set the sticks");
      await page.locator(".station .handle").first().waitFor({ timeout: 60_000 });
    },
  },
  {
    name: "practice",
    open: async (page) => {
      await press(page, "Back");
      await press(page, "Practise");
      await screen(page, "practice");
      await page.locator('.status .word:has-text("Seen")').waitFor({ timeout: 60_000 });
    },
  },
];
