import type { ShaftTuning } from "./shaft-tuning.ts";
import type { StandingLines } from "./standing-lines.ts";

/**
 * Odds, 0 to 1, that what is seen in a direction goes with the hands, and does not stand where it stood while they went: a stick that the club uncovered is new in
 * the picture, but stays where it is. Remembers where it is seen now. Places in working pixels without the sway; `torso` too.
 */
export function oddsCarried(
  standing: StandingLines,
  direction: number,
  endX: number,
  endY: number,
  handsX: number,
  handsY: number,
  torso: number,
  tuning: ShaftTuning,
): number {
  const wayX = (endX - (standing.endX[direction] as number)) / torso;
  const wayY = (endY - (standing.endY[direction] as number)) / torso;
  const stood = Math.hypot(wayX, wayY) / tuning.standSd;
  if (!(stood < 3)) {
    standing.endX[direction] = endX;
    standing.endY[direction] = endY;
    standing.handsX[direction] = handsX;
    standing.handsY[direction] = handsY;
    return 1;
  }
  const goneX = (handsX - (standing.handsX[direction] as number)) / torso;
  const goneY = (handsY - (standing.handsY[direction] as number)) / torso;
  const carried = Math.hypot(wayX - goneX, wayY - goneY) / tuning.carrySd;
  return 1 / (1 + Math.exp(0.5 * (carried * carried - stood * stood) - tuning.carriedBefore));
}
