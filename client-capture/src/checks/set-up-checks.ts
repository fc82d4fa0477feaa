import type { Calibration } from "@overcue/shared-geometry/camera";
import type { StageId } from "@overcue/shared-geometry/wire/practice";
import type { SourceInfo } from "../frames/frame-source.ts";
import { cameraChecks } from "./camera-checks.ts";
import type { CameraView } from "./camera-view.ts";
import { certificateCheck, type CertificateState } from "./certificate-check.ts";
import type { TopSeen } from "./follow-top.ts";
import type { Framing } from "./framing.ts";
import { lightCheck, rateCheck, type LightSeen } from "./light-checks.ts";
import { rodCheck, type RodChoice } from "./rod-check.ts";
import type { SetUpCheck } from "./set-up-check.ts";

/** All that the set-up list is made of. */
export interface SetUpFacts {
  readonly source: Pick<SourceInfo, "kind"> | null;
  readonly certificate: CertificateState;
  readonly calibration: Calibration;
  readonly view: CameraView | null;
  readonly framing: Framing;
  readonly top: TopSeen;
  readonly light: LightSeen;
  readonly rod: RodChoice;
  readonly rodOn: boolean;
  readonly stage: StageId | null;
  readonly spaceClear: boolean;
}

/**
 * The phone's set-up list in the order in which things are put right. What cannot be seen before a source runs is left out; a clip and the demo golfer
 * have no light and no space to look after.
 */
export function setUpChecks(facts: SetUpFacts): readonly SetUpCheck[] {
  const first = [certificateCheck(facts.certificate)];
  if (facts.source === null) return first;
  const live = facts.source.kind === "camera";
  const { light, stage } = facts;
  return [
    ...first,
    framingCheck(facts.framing),
    ...(live ? [lightCheck(light, stage), rateCheck(light.framesPerSecond, stage)] : []),
    stickCheck(facts.calibration),
    ...cameraChecks(facts.view),
    topCheck(facts.top),
    rodCheck(facts.rod, facts.rodOn),
    ...(live ? [spaceCheck(facts.spaceClear)] : []),
  ];
}

/** The one to put right next: what is wrong before what is open. Null where neither is left. */
export const nextCheck = (checks: readonly SetUpCheck[]): SetUpCheck | null =>
  checks.find(({ state }) => state === "problem") ?? checks.find(({ state }) => state === "not-yet") ?? null;

function framingCheck(framing: Framing): SetUpCheck {
  const id = "body-in-frame";
  switch (framing) {
    case "whole":
      return { id, state: "ok", words: "Whole body in the picture", todo: "" };
    case "nobody":
      return { id, state: "not-yet", words: "Nobody found yet", todo: "Take your stance at the ball, in the picture." };
    case "head-out":
      return { id, state: "problem", words: "Head out of the picture", todo: "Tilt the phone up, or move it back." };
    case "feet-out":
      return { id, state: "problem", words: "Feet out of the picture", todo: "Tilt the phone down, or move it back." };
    case "to-the-side":
      return { id, state: "problem", words: "Body partly out at the side", todo: "Turn the phone towards the golfer." };
    case "small":
      return {
        id,
        state: "problem",
        words: "Golfer small in the picture",
        todo: "Bring the phone nearer, to about 4 m.",
      };
  }
}

function stickCheck(calibration: Calibration): SetUpCheck {
  const id = "sticks";
  switch (calibration) {
    case "station":
      return { id, state: "ok", words: "Sticks found, camera known from them", todo: "" };
    case "demo":
      return { id, state: "ok", words: "Demo camera, known beforehand", todo: "" };
    case "suspect":
      return {
        id,
        state: "problem",
        words: "Camera or sticks moved",
        todo: "Set the sticks again: until then readings are marked and not counted.",
      };
    case "uncalibrated":
      return {
        id,
        state: "not-yet",
        words: "Sticks not set: readings are rough",
        todo: "Lay the three sticks, then press “Set the sticks”.",
      };
  }
}

function topCheck(top: TopSeen): SetUpCheck {
  const id = "club-at-top";
  switch (top) {
    case "inside":
      return { id, state: "ok", words: "Club in the picture at the top", todo: "" };
    case "outside":
      return {
        id,
        state: "problem",
        words: "Club leaves the picture at the top",
        todo: "Tilt the phone up or move it back, then swing to the top once more.",
      };
    case "never":
      return {
        id,
        state: "not-yet",
        words: "Club at the top not seen yet",
        todo: "Swing slowly to the top once and stay a moment.",
      };
  }
}

const spaceCheck = (clear: boolean): SetUpCheck => ({
  id: "space-clear",
  state: clear ? "ok" : "not-yet",
  words: clear ? "Space clear, as you said" : "Space clear? Only you can tell",
  todo: "Look all round and overhead, swing slowly once, then press “Space is clear”.",
});
