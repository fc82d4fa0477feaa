import type { Drill } from "../drill-schema.ts";
import { rodCautions } from "./cautions.ts";

/** The reverse: for a club that goes back too steep and comes down too far under. */
export const steepBack: Drill = {
  format: "overcue-drill/1",
  id: "low-road-high-road",
  name: "Low road back, high road down",
  summary: "For a club that goes back too steep and drops under coming down: the opposite, and more of it.",
  source: "common practice, no source; the mirror of the drill for flat back and steep down",
  suits: "steep-to-flat",
  checkpoints: [
    {
      checkpoint: "takeaway",
      wanted: { band: "ball-line" },
      cue: { direction: "none", usual: { band: "ball-line" } },
      say: "Slide the club head back over the ball stick.",
    },
    {
      checkpoint: "shaft-level-back",
      wanted: { band: "ball-to-toe" },
      cue: { direction: "none", usual: { band: "ball-to-toe" } },
      say: "Level shaft: club head between the ball stick and the toe stick.",
    },
    {
      checkpoint: "arm-level-back",
      wanted: { from: { line: "ball-line", offset: -0.05 }, to: { line: "ball-line", offset: 0.15 } },
      cue: { direction: "beyond-ball", usual: { band: "beyond-ball" } },
      say: "Going back, point the butt end beyond the ball stick.",
    },
    {
      checkpoint: "arm-level-down",
      wanted: { from: { line: "ball-line", offset: -0.15 }, to: { line: "ball-line", offset: 0.05 } },
      cue: { direction: "towards-heels", usual: { band: "toe-line" } },
      say: "Coming down, point the butt end at the toe stick.",
    },
  ],
  corridor: { band: "ball-line" },
  layOut: [
    "One stick through the ball towards the target.",
    "One stick along the toes and one along the heels, both parallel to the first.",
    "The bright rod along the shaft, standing out of the butt end, for slow rehearsals only.",
  ],
  say: [
    "Back: butt end beyond the ball stick.",
    "Down: butt end at the toe stick.",
    "Aim where the screen says felt, not where it says wanted.",
  ],
  cautions: rodCautions,
};
