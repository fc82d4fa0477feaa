import type { CameraView } from "./camera-view.ts";
import type { SetUpCheck } from "./set-up-check.ts";

/**
 * Between these the camera's place costs little: a misjudged depth then moves the butt point by at most about 15 mm, against 25-52 mm from the ball
 * line (derived). Metres; degrees. Wider: fewer complaints.
 */
const height = { least: 0.6, most: 1.3 };
const behind = { least: 2.8, most: 5.5 };
const mostAside = 0.25;
const mostRoll = 3;

/** Level, height, distance and hand line of the solved camera; all of them unknown while there is none. */
export function cameraChecks(view: CameraView | null): readonly SetUpCheck[] {
  if (view === null) return unknownView;
  return [levelCheck(view), heightCheck(view), distanceCheck(view), handLineCheck(view)];
}

const waiting = "Set the sticks: they tell where the phone stands.";
const unknownView: readonly SetUpCheck[] = [
  { id: "camera-level", state: "unknown", words: "Phone level: known once the sticks are set", todo: waiting },
  { id: "camera-height", state: "unknown", words: "Lens height: known once the sticks are set", todo: waiting },
  { id: "camera-distance", state: "unknown", words: "Distance: known once the sticks are set", todo: waiting },
  { id: "hand-line", state: "unknown", words: "Hand line: known once the sticks are set", todo: waiting },
];

function levelCheck({ roll }: CameraView): SetUpCheck {
  const by = Math.abs(roll).toFixed(0);
  const level = Math.abs(roll) <= mostRoll;
  return {
    id: "camera-level",
    state: level ? "ok" : "problem",
    words: level ? "Phone level" : `Phone leans by ${by} degrees`,
    todo: `Turn the phone by ${by} degrees until the ground line in its picture is level.`,
  };
}

function heightCheck(view: CameraView): SetUpCheck {
  const up = `${view.height.toFixed(2)} m`;
  const base = { id: "camera-height" as const, words: `Lens ${up} up` };
  if (view.height > height.most)
    return { ...base, state: "problem", todo: `Lower the lens to hand height, 0.8 to 1.0 m: it is ${up} up.` };
  if (view.height < height.least)
    return { ...base, state: "problem", todo: `Raise the lens to hand height, 0.8 to 1.0 m: it is ${up} up.` };
  return { ...base, state: "ok", todo: "" };
}

function distanceCheck(view: CameraView): SetUpCheck {
  const far = `${view.behindBall.toFixed(1)} m`;
  const base = { id: "camera-distance" as const, words: `Phone ${far} behind the ball` };
  if (view.behindBall > behind.most)
    return {
      ...base,
      state: "problem",
      todo: `Bring the phone nearer, to about 4 m behind the ball: it is at ${far}.`,
    };
  if (view.behindBall < behind.least)
    return { ...base, state: "problem", todo: `Move the phone back to about 4 m behind the ball: it is at ${far}.` };
  return { ...base, state: "ok", todo: "" };
}

function handLineCheck({ aside }: CameraView): SetUpCheck {
  const by = `${Math.round(Math.abs(aside) * 100)} cm`;
  const towards = aside > 0 ? "ball" : "heels";
  const on = Math.abs(aside) <= mostAside;
  return {
    id: "hand-line",
    state: on ? "ok" : "problem",
    words: on ? "Phone on the hand line" : `Phone ${by} off the hand line`,
    todo: `Move the phone ${by} sideways, towards the ${towards} side, so that it looks along the line of the hands.`,
  };
}
