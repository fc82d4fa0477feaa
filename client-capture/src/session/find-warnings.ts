import { darkBelow } from "../checks/light-checks.ts";
import type { SourceInfo } from "../frames/frame-source.ts";

interface Circumstances {
  readonly source: SourceInfo | null;
  readonly framesPerSecond: number;
  /** The best rate that this source has had; 0 where none is known. */
  readonly bestFramesPerSecond: number;
  readonly posesPerSecond: number;
  /** Share of the last seconds' pictures that nobody had time for, 0 to 1. */
  readonly missedShare: number;
  readonly battery: number | null;
  readonly repTrouble: string | null;
  readonly stationNews: string;
  readonly databaseMissing: boolean;
  readonly failedFrames: number;
  /** 0 to 255; null before the first picture. */
  readonly brightness: number | null;
  /** The phone has a light, and it is off. */
  readonly torchWaits: boolean;
  readonly newerPage: boolean;
}

const lowBattery = 0.2;
/** A camera under this many pictures a second shows slow rehearsals only. */
const fewFrames = 24;
const slowedDown = 0.65;
const fewPoses = 6;
const missesMany = 0.1;

/** What the golfer should do something about, most urgent first; each sentence says what is wrong and what to do. */
export function findWarnings(now: Circumstances): string[] {
  const warnings: string[] = [];
  if (now.stationNews !== "") warnings.push(now.stationNews);
  if (now.repTrouble !== null) {
    warnings.push(`The relay did not take a rep (${now.repTrouble}): it is kept on this phone and sent again.`);
  }
  if (now.battery !== null && now.battery < lowBattery) {
    warnings.push(`Battery at ${Math.round(now.battery * 100)} %: plug the phone in before the next block.`);
  }
  if (now.newerPage) {
    warnings.push("The relay has a newer page than this one: press Stop, and it is loaded.");
  }
  const live = now.source?.kind === "camera" && now.framesPerSecond > 0;
  if (live && now.brightness !== null && now.brightness < darkBelow) {
    warnings.push(
      `The picture is too dark: ${now.torchWaits ? "switch this phone's light on" : "give the place more light"}.`,
    );
  }
  if (live && now.bestFramesPerSecond > 0 && now.framesPerSecond < slowedDown * now.bestFramesPerSecond) {
    warnings.push(
      "The phone has slowed down, likely from heat: shade it, take it off the charger, close other programs.",
    );
  } else if (live && now.framesPerSecond < fewFrames) {
    warnings.push(
      `Only ${Math.round(now.framesPerSecond)} pictures a second: rehearse slowly, or give the place more light.`,
    );
  }
  if (now.source !== null && now.framesPerSecond > 0 && now.posesPerSecond > 0 && now.posesPerSecond < fewPoses) {
    warnings.push("The body is found only a few times a second on this device: move slowly.");
  }
  if (live && now.missedShare > missesMany) {
    const looked = Math.round(100 * (1 - now.missedShare));
    warnings.push(`This device looks at ${looked} of 100 pictures only: close other programs and pages on it.`);
  }
  if (now.failedFrames >= 5) {
    warnings.push(
      `${now.failedFrames} pictures could not be measured: if this grows, close the page and open it again.`,
    );
  }
  if (now.databaseMissing) {
    warnings.push(
      "This browser keeps nothing (a private window?): reps are lost if the page closes before they are sent.",
    );
  }
  return warnings.slice(0, 10);
}
