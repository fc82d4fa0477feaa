import { keepByPose, seeLine } from "./carry-hands.ts";
import { lineBefore, type HandsTrack } from "./hands-track.ts";
import type { ShaftTuning } from "./shaft-tuning.ts";

/**
 * The shaft was found in the newest picture: its line passes (`x`, `y`) at `angle` and turns at `rate` radians a second. It moves the hands no farther from where the pose has
 * them than `keepByPose` allows, lest a wrong line lead them away.
 */
export function correctHands(
  track: HandsTrack,
  angle: number,
  x: number,
  y: number,
  rate: number,
  tuning: ShaftTuning,
): void {
  const { newest, moving, now } = track;
  const line = lineBefore(track, 1);
  if (line === null || newest === null) return;
  line.found = true;
  line.nx = -Math.sin(angle);
  line.ny = Math.cos(angle);
  line.place = line.nx * x + line.ny * y;
  line.turning = Math.abs(rate);
  seeLine(moving, line, tuning.lineSd * newest.torso);
  keepByPose(track, line.t, line.turning, tuning);
  now.x = moving.state[0] as number;
  now.y = moving.state[1] as number;
}
