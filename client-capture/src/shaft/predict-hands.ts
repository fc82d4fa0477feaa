import type { Milliseconds } from "@overcue/shared-geometry/units";
import type { Body } from "../pipeline/body.ts";
import { carryHands, carryThroughLines, farthestFromPose, keepByPose } from "./carry-hands.ts";
import { readHands, type Hands } from "./hands.ts";
import { copyHandsMotion, keepHandsNear, restHandsAt, seeHands, type HandsMotion } from "./hands-motion.ts";
import { lineBefore, type HandsLine, type HandsTrack } from "./hands-track.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/** Moves the track to `t` with the newest pose. False where none has been seen, or none lately. */
export function predictHands(track: HandsTrack, t: Milliseconds, body: Body | null, tuning: ShaftTuning): boolean {
  const last = lineBefore(track, 1);
  if (body !== null && body.t !== track.newest?.t) takePose(track, body, tuning);
  const { newest, moving, now } = track;
  if (newest === null || t - newest.t > 1000 * tuning.oldestPose) return false;
  carryHands(track, moving, Math.max(newest.t, last?.t ?? -Infinity), t, last?.turning ?? 0, tuning);
  keepByPose(track, t, last?.turning ?? 0, tuning);
  openLine(track, t, last, tuning);
  now.x = moving.state[0] as number;
  now.y = moving.state[1] as number;
  now.torso = newest.torso;
  now.apart = newest.apart;
  now.seen = newest.seen;
  now.height = newest.height;
  return true;
}

/** Until it is found in it, the shaft is taken to turn ever less. */
function openLine(track: HandsTrack, t: number, last: HandsLine | null, tuning: ShaftTuning): void {
  const line = track.lines[track.count % track.lines.length];
  track.count++;
  if (line === undefined) return;
  line.turning = (last?.turning ?? 0) * Math.exp((-0.001 * (t - (last?.t ?? t))) / tuning.turningMemory);
  line.t = t;
  line.found = false;
}

/** A pose is taken in at its own time; what the pictures since have shown is then gone through again. */
function takePose(track: HandsTrack, body: Body, tuning: ShaftTuning): void {
  const hands = readHands(body);
  if (hands === null) return;
  const { newest, atPose, moving } = track;
  const elapsed = newest === null ? 0 : (body.t - newest.t) / 1000;
  if (newest !== null && elapsed > 0 && elapsed < tuning.longestGap) {
    // The body's size hardly changes from picture to picture, but its reading does.
    hands.torso = newest.torso + (1 - Math.exp(-elapsed / 0.5)) * (hands.torso - newest.torso);
    carryThroughLines(track, atPose, newest.t, body.t, tuning);
    seePose(atPose, hands, tuning);
    track.poseSpeedX = (hands.x - newest.x) / elapsed;
    track.poseSpeedY = (hands.y - newest.y) / elapsed;
  } else {
    const { torso } = hands;
    track.poseSpeedX = 0;
    track.poseSpeedY = 0;
    const jitter = poseJitter(hands, tuning);
    restHandsAt(atPose, hands.x, hands.y, tuning.offsetSd * torso, jitter, tuning.handsSpeedSd * torso);
  }
  track.newest = { ...hands, t: body.t };
  copyHandsMotion(atPose, moving);
  carryThroughLines(track, moving, body.t, Infinity, tuning);
}

function seePose(motion: HandsMotion, hands: Hands, tuning: ShaftTuning): void {
  const sd = poseJitter(hands, tuning);
  seeHands(motion, 1, 0, hands.x, sd, 1);
  seeHands(motion, 0, 1, hands.y, sd, 1);
  keepHandsNear(motion, hands.x, hands.y, farthestFromPose(hands, tuning));
}

/** What differs from pose to pose by itself, picture pixels: hands that lie apart contradict each other, hands that are half hidden are guessed. */
const poseJitter = ({ torso, apart, seen }: Hands, tuning: ShaftTuning): number =>
  Math.hypot(tuning.poseJitter * torso, tuning.apartSd * apart, tuning.hiddenSd * (1 - seen) * torso);
