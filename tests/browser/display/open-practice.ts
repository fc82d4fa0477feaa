import type { Page } from "playwright-core";
import { practiceState } from "../../fakes/practice-scenes.ts";
import { runEstimate } from "../../fakes/practice-run.ts";
import type { ScriptedRelay } from "../../fakes/scripted-relay.ts";
import { setStage, views } from "./views.ts";

export interface OpenPractice {
  /** How often React has changed the page so far. */
  readonly commits: () => Promise<number>;
  /** How many paints have drawn so far. */
  readonly drawn: () => Promise<number>;
  /** Script time of each paint so far, milliseconds. */
  readonly paintTimes: () => Promise<readonly number[]>;
  /** The browser's own time of each of these paints, milliseconds. */
  readonly paintedAt: () => Promise<readonly number[]>;
  readonly sayEstimates: (count: number, everyMs: number, momentOf: (index: number) => number) => Promise<void>;
  readonly pause: () => void;
}

/** What the page is watched with, on its own window. */
interface Watch {
  overcueCommits: number;
  overcuePaints: number[];
  overcueFrames: number[];
}

/** The practice view, watched from before its first script: React's commits and the script time of every animation frame. */
export async function openPractice(page: Page, relay: ScriptedRelay, viewingDistance = 3): Promise<OpenPractice> {
  await page.addInitScript((distance) => {
    const settings = { cautionsRead: true, viewingDistance: distance };
    localStorage.setItem("overcue-screen", JSON.stringify(settings));
    const watch: Watch = { overcueCommits: 0, overcuePaints: [], overcueFrames: [] };
    const hook = {
      supportsFiber: true,
      inject: () => 1,
      onCommitFiberRoot: () => {
        watch.overcueCommits++;
      },
      onCommitFiberUnmount: () => undefined,
      onPostCommitFiberRoot: () => undefined,
    };
    Object.assign(window, { __REACT_DEVTOOLS_GLOBAL_HOOK__: hook, overcueWatch: watch });
    const request = window.requestAnimationFrame.bind(window);
    window.requestAnimationFrame = (callback) =>
      request((time) => {
        const start = performance.now();
        callback(time);
        watch.overcuePaints.push(performance.now() - start);
        watch.overcueFrames.push(time);
      });
  }, viewingDistance);
  const [first] = views;
  if (first === undefined) throw new Error("no views");
  setStage(relay, first);
  relay.say.peers({ capture: 1, display: 1, coach: 0 });
  await page.goto(relay.address("ground"));
  await page.click("[data-main]");
  await page.waitForSelector("[data-screen=practice] canvas");
  await page.evaluate(() => document.fonts.ready);
  const watched = async (): Promise<Watch> =>
    await page.evaluate(() => (window as unknown as { overcueWatch: Watch }).overcueWatch);
  let sequence = 0;
  return {
    commits: async () => (await watched()).overcueCommits,
    drawn: async () => (await watched()).overcuePaints.length,
    paintTimes: async () => (await watched()).overcuePaints,
    paintedAt: async () => (await watched()).overcueFrames,
    sayEstimates: async (count, everyMs, momentOf) => {
      for (let index = 0; index < count; index++) {
        sequence++;
        relay.say.estimate(runEstimate(sequence, momentOf(index), Date.now() - 30));
        await new Promise((resolve) => setTimeout(resolve, everyMs));
      }
    },
    pause: () => {
      relay.say.practice(practiceState({ revision: 99, paused: true }));
    },
  };
}
