import type { Page } from "playwright-core";
import type { Verdict } from "@overcue/shared-geometry/wire/practice";
import {
  captureState,
  demoSessionView,
  liveEstimate,
  practiceState,
  repOf,
  repIds,
  sure,
  unsure,
} from "../../fakes/practice-scenes.ts";
import type { ScriptedRelay } from "../../fakes/scripted-relay.ts";

/** The sizes that every view must hold, each with the farthest whole half metre from which it can be read by the rule. */
export const viewports = [
  { width: 360, height: 780, distance: 1.5 },
  { width: 820, height: 1180, distance: 2.5 },
  { width: 1280, height: 800, distance: 3 },
  { width: 1920, height: 1080, distance: 3 },
] as const;

export const demoVerdict: Verdict = {
  repId: repIds[0],
  kind: "answer",
  sentence: "Back: ball to toes. Down: ball line. Feel: back heel line, down beyond the ball.",
  places: [
    { checkpoint: "arm-level-back", y: 0.3, sd: 0.03, inWanted: false, carryOver: 0.6 },
    { checkpoint: "arm-level-down", y: 0.01, sd: 0.02, inWanted: true, carryOver: 0.9 },
  ],
};

/** One thing that people see: what the relay says, what is done on the page, and how to know that it is there. */
export interface View {
  readonly name: string;
  readonly page: "ground" | "coach";
  readonly screen: string;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly before?: (relay: ScriptedRelay) => void;
  readonly after?: (page: Page, relay: ScriptedRelay) => Promise<void>;
}

const practised = { cautionsRead: true, knownPlace: true };

export const views: readonly View[] = [
  {
    name: "pairing",
    page: "ground",
    screen: "pairing",
    before: (relay) => {
      relay.say.peers(nobody);
    },
  },
  { name: "cautions", page: "ground", screen: "cautions" },
  {
    name: "set-up",
    page: "ground",
    screen: "set-up",
    settings: { cautionsRead: true },
    before: (relay) => {
      relay.say.captureState(captureState({ checks: halfChecked, calibration: "uncalibrated" }));
    },
  },
  { name: "practice", page: "ground", screen: "practice", settings: practised, after: startPractice },
  {
    name: "practice-unsure",
    page: "ground",
    screen: "practice",
    settings: { ...practised, theme: "dim" },
    after: async (page, relay) => {
      await page.click("[data-main]");
      await say(page, relay, "unsure", (n) =>
        liveEstimate(n, Date.now() - 60, {
          x: -0.1,
          y: -0.07,
          sdY: 0.06,
          band: unsure("beyond-ball", "ball-line"),
          calibration: "uncalibrated",
        }),
      );
    },
  },
  {
    name: "practice-beside",
    page: "ground",
    screen: "practice",
    settings: { ...practised, screenPlace: "target-side", theme: "night" },
    after: startPractice,
  },
  {
    name: "practice-outside",
    page: "ground",
    screen: "practice",
    settings: practised,
    after: async (page, relay) => {
      await page.click("[data-main]");
      await say(page, relay, "sure", (n) =>
        liveEstimate(n, Date.now() - 60, { x: -0.2, y: -1.1, band: sure("beyond-ball") }),
      );
    },
  },
  {
    name: "practice-baseline",
    page: "ground",
    screen: "practice",
    settings: practised,
    before: (relay) => {
      relay.say.practice(practiceState({ mode: "baseline", repsInBlock: 2, blockSize: 7, nextRepAnswered: false }));
    },
    after: async (page, relay) => {
      await page.click("[data-main]");
      await say(page, relay, "none", (n) =>
        liveEstimate(n, Date.now() - 60, {
          x: -0.1,
          y: 0.22,
          band: sure("ball-to-toe"),
          calibration: "uncalibrated",
        }),
      );
      await page.waitForFunction(() => document.body.textContent.includes("rep 3 of 7"));
    },
  },
  {
    name: "verdict",
    page: "ground",
    screen: "verdict",
    settings: { ...practised, verdictSeconds: 600 },
    after: async (page, relay) => {
      await page.click("[data-main]");
      await page.waitForSelector("[data-screen=practice]");
      relay.say.rep(repOf(repIds[0], Date.now(), 0.3, 0.01));
      relay.say.practice(practiceState({ revision: 2, verdict: demoVerdict, repsInBlock: 5, repsInStage: 25 }));
    },
  },
  {
    name: "felt-question",
    page: "ground",
    screen: "felt-question",
    settings: practised,
    before: (relay) => {
      relay.say.practice(practiceState({ feltAnswerWanted: repIds[0], feltAnswerCheckpoint: "arm-level-back" }));
    },
    after: async (page) => {
      await page.click("[data-main]");
    },
  },
  {
    name: "changed-by-another",
    page: "ground",
    screen: "practice",
    settings: practised,
    after: async (page, relay) => {
      await startPractice(page, relay);
      // A message stays for a few seconds only: another change follows.
      let revision = 1;
      const change = (): void => {
        revision++;
        const lastChange = { by: "Robin (invented)", what: "set exaggerate by to 35 cm", at: revision };
        relay.say.practice(practiceState({ revision, lastChange }));
      };
      change();
      relay.keepSaying(2000, change);
      await page.waitForSelector(".notice");
    },
  },
  { name: "codes", page: "ground", screen: "codes", settings: practised, after: openCodes },
  { name: "menu", page: "ground", screen: "menu", settings: practised, after: overlay("Escape") },
  { name: "settings", page: "ground", screen: "settings", settings: practised, after: overlay(",") },
  { name: "help", page: "ground", screen: "help", settings: practised, after: overlay("h") },
  {
    name: "session",
    page: "ground",
    screen: "session",
    settings: practised,
    before: (relay) => {
      relay.say.practice(practiceState({ view: "session" }));
    },
    after: async (page) => {
      await page.click("[data-main]");
      await page.waitForSelector(".plot canvas");
    },
  },
  {
    name: "coach",
    page: "coach",
    screen: "coach",
    before: (relay) => {
      relay.say.practice(
        practiceState({ lastChange: { by: "ground screen", what: "moved to flow", at: 1_790_000_000_000 } }),
      );
    },
    after: async (page) => {
      await page.waitForSelector(".rep-list li");
    },
  },
];

/** Says what stands before every view, so that no view depends on the one before it. */
export function setStage(relay: ScriptedRelay, view: View): void {
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  relay.say.pairing({
    phone: `https://192.0.2.20:8443/phone/#pair=${"a1B2".repeat(8)}`,
    coach: `https://192.0.2.20:8443/coach/#pair=${"a1B2".repeat(8)}`,
    trust: "http://192.0.2.20:8080/",
  });
  relay.say.captureState(captureState({ checks: allChecked }));
  relay.say.practice(practiceState());
  relay.setSessionView(demoSessionView());
  view.before?.(relay);
}

/** Opens a view at a size and waits until it stands. */
export async function openView(page: Page, relay: ScriptedRelay, view: View, viewingDistance: number): Promise<void> {
  setStage(relay, view);
  const settings = { viewingDistance, ...view.settings };
  await page.addInitScript((stored) => {
    localStorage.setItem("overcue-screen", JSON.stringify(stored));
  }, settings);
  await page.goto(relay.address(view.page));
  await page.waitForSelector("[data-screen]");
  await view.after?.(page, relay);
  await page.waitForSelector(`[data-screen=${view.screen}]`);
  await page.evaluate(() => document.fonts.ready);
}

const nobody = { capture: 0, display: 1, coach: 0 };
const allChecked = {
  "camera-level": "ok",
  "camera-height": "ok",
  "camera-distance": "ok",
  "body-in-frame": "ok",
  sticks: "ok",
} as const;
const halfChecked = {
  certificate: "ok",
  "camera-level": "ok",
  "camera-height": "problem",
  "camera-distance": "ok",
  "hand-line": "not-yet",
  "body-in-frame": "ok",
  "club-at-top": "not-yet",
  light: "ok",
  "frame-rate": "ok",
  sticks: "not-yet",
  "rod-colour": "unknown",
} as const;

async function startPractice(page: Page, relay: ScriptedRelay): Promise<void> {
  await page.click("[data-main]");
  await say(page, relay, "sure", (n) =>
    liveEstimate(n, Date.now() - 60, { x: -0.1, y: 0.22, band: sure("ball-to-toe") }),
  );
}

/** Live estimates from now on; waits until the big word stands. */
async function say(
  page: Page,
  relay: ScriptedRelay,
  kind: "sure" | "unsure" | "none",
  make: (sequence: number) => ReturnType<typeof liveEstimate>,
): Promise<void> {
  let sequence = 0;
  relay.keepSaying(40, () => {
    sequence++;
    relay.say.estimate(make(sequence));
  });
  await page.waitForSelector(`[data-part=key-word][data-kind=${kind}]`);
}

async function openCodes(page: Page): Promise<void> {
  await overlay("Escape")(page);
  await page.click("[data-choice=codes]");
}

function overlay(key: string): (page: Page) => Promise<void> {
  return async (page) => {
    await page.click("[data-main]");
    await page.waitForSelector("[data-screen=practice]");
    await page.keyboard.press(key);
  };
}
