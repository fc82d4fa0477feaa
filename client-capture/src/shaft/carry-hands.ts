import type { Hands } from "./hands.ts";
import { keepHandsNear, moveHands, seeHands, type HandsMotion } from "./hands-motion.ts";
import { lineBefore, torsoOf, type HandsLine, type HandsTrack } from "./hands-track.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Carries a motion from one time to another, milliseconds, while the shaft turns at `turning` radians a second: with it the hands change their speed fast. */
export function carryHands(
  track: HandsTrack,
  motion: HandsMotion,
  from: number,
  to: number,
  turning: number,
  tuning: ShaftTuning,
): void {
  const torso = torsoOf(track);
  const seconds = Math.max(0, to - from) / 1000;
  const speed = Math.hypot(motion.state[2] as number, motion.state[3] as number) / torso;
  const { handsWander, handsWanderTurning, handsWanderGoing } = tuning;
  moveHands(motion, seconds, {
    speed: torso * torso * (handsWander + handsWanderTurning * turning * turning + handsWanderGoing * speed * speed),
    drag: tuning.handsDrag,
    poseKept: Math.exp(-seconds / tuning.poseMemory - (seconds * speed) / tuning.poseWay),
    poseSd: tuning.offsetSd * torso,
  });
  if (track.newest !== null) keepInReach(motion, track.newest, tuning.armReach * torso);
}

/** Carries a motion through the pictures after `from` up to and with `to`, milliseconds, and on to `to` where that is finite; it sees the lines that were found in them. */
export function carryThroughLines(
  track: HandsTrack,
  motion: HandsMotion,
  from: number,
  to: number,
  tuning: ShaftTuning,
): void {
  let at = from;
  let turning = 0;
  for (let back = Math.min(track.count, track.lines.length); back >= 1; back--) {
    const line = lineBefore(track, back);
    if (line === null || line.t > to) break;
    if (line.t > from) {
      carryHands(track, motion, at, line.t, line.turning, tuning);
      if (line.found) seeLine(motion, line, tuning.lineSd * torsoOf(track));
      at = line.t;
    }
    turning = line.turning;
  }
  if (to < Infinity) carryHands(track, motion, at, to, turning, tuning);
}

/** The hands lie on the line, give or take `sd` picture pixels. */
export function seeLine(motion: HandsMotion, { nx, ny, place }: HandsLine, sd: number): void {
  seeHands(motion, nx, ny, place, sd, 0);
}

/** Hands get no farther from the shoulders than arms reach, `reach` picture pixels: there they go round, not out. */
function keepInReach({ state }: HandsMotion, { shoulders }: Hands, reach: number): void {
  const dx = (state[0] as number) - shoulders.x;
  const dy = (state[1] as number) - shoulders.y;
  const far = Math.hypot(dx, dy);
  if (far <= reach) return;
  state[0] = shoulders.x + (dx * reach) / far;
  state[1] = shoulders.y + (dy * reach) / far;
  const out = Math.max(0, (dx * (state[2] as number) + dy * (state[3] as number)) / far);
  state[2] = (state[2] as number) - (out * dx) / far;
  state[3] = (state[3] as number) - (out * dy) / far;
}

/** How far the shaft's line may move the hands from a pose at most, picture pixels: farther from one that hardly saw them. */
export const farthestFromPose = ({ torso, seen }: Hands, tuning: ShaftTuning): number =>
  torso * (tuning.farthestCorrection + tuning.farthestHidden * (1 - seen));

/**
 * The hands are no farther from where the poses alone have them at `t` than a wrong line may lead them (a quarter of a torso), and than a shaft that turns at `turning` radians a
 * second may have carried them since the newest.
 */
export function keepByPose(track: HandsTrack, t: number, turning: number, tuning: ShaftTuning): void {
  const { newest, moving, poseSpeedX, poseSpeedY } = track;
  if (newest === null) return;
  const ahead = Math.max(0, t - newest.t) / 1000;
  const farthest = farthestFromPose(newest, tuning) + newest.torso * tuning.turningCarries * turning * ahead;
  keepHandsNear(moving, newest.x + ahead * poseSpeedX, newest.y + ahead * poseSpeedY, farthest);
  keepInReach(moving, newest, tuning.armReach * newest.torso);
}
