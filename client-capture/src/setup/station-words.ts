import type { StationSolution } from "@overcue/shared-geometry/solve-station";
import type { StationLine } from "@overcue/shared-geometry/station";
import { cautionSentences } from "@overcue/shared-geometry/station-verdict";
import type { SnapRefusal } from "../station/snap-stick.ts";
import type { FoundStation } from "../station/find-sticks.ts";
import type { StationNews } from "../station/watch-station.ts";
import type { Told } from "../page/words.ts";

export const lineNames: Readonly<Record<StationLine, string>> = {
  "ball-line": "ball line",
  "toe-line": "toe line",
  "heel-line": "heel line",
};

/** The verdict over the marked sticks, with numbers a person can check with a tape measure. */
export function verdictWords(solution: StationSolution | null): Told & { readonly todo: string } {
  if (solution === null) {
    return {
      standing: "waiting",
      words: "Put each mark on its stick's end",
      todo: "Sticks that are not laid: take them off the list below.",
    };
  }
  if (solution.verdict === "refused") return { standing: "bad", words: solution.sentence, todo: solution.whatToDo };
  const { position } = solution.camera;
  const place = `Phone ${(-position.x).toFixed(1)} m behind the ball, ${position.z.toFixed(2)} m up`;
  const share = `adds ${(100 * solution.buttSd).toFixed(1)} cm of doubt`;
  if (solution.caution === null) return { standing: "good", words: `${place}, ${share}`, todo: "" };
  const { wrong, cure } = cautionSentences[solution.caution];
  return { standing: "waiting", words: `${place}, ${share}. ${wrong}`, todo: cure };
}

/** What the watch over the sticks saw, and what to do; empty where there is nothing to do. */
export function newsSentence(news: StationNews): string {
  switch (news.news) {
    case "stick-moved":
      return `The stick on the ${lineNames[news.line]} was moved: put it back, or set the sticks again.`;
    case "phone-moved":
      return news.solution === null
        ? "The phone or the sticks were moved: set the sticks again."
        : "The phone was moved, and its place was found again from the sticks.";
    case "steady":
    case "not-seen":
    case "wait":
      return "";
  }
}

export const snapWords: Readonly<Record<SnapRefusal, string>> = {
  "too-short": "Both marks of a stick lie on each other: drag one to the stick's other end.",
  "nothing-bright-there": "No stick stands out between these marks, so they stay where you put them.",
  "not-straight": "What lies between these marks is not straight, so they stay where you put them.",
};

/** While pictures are gathered: before the first, and from then on. */
export const lookingWords = "Looking for the sticks: step off them.";
export const gatherWords = (kept: number, of: number): string =>
  kept < of ? `Looking: picture ${kept} of ${of}. Step off the sticks.` : "Looking for the sticks…";

export const searchWords: Readonly<Record<Extract<FoundStation, { found: false }>["reason"], string>> = {
  "no-lines": "No sticks stand out by themselves: drag the marks onto the sticks' ends.",
  "no-station-among-them": "No station was found by itself: drag the marks onto the sticks' ends.",
};
