import type { Drill } from "../drill-schema.ts";
import { rodCautions } from "./cautions.ts";

/** For a club that goes back too flat and comes down too steep. */
export const flatBack: Drill = {
  format: "overcue-drill/1",
  id: "high-road-low-road",
  name: "High road back, low road down",
  summary: "For a club that travels too flat going back and too steep coming down: the opposite, and more of it.",
  source: "common practice, no source",
  suits: "flat-to-steep",
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
      cue: { direction: "towards-heels", usual: { band: "heel-line" } },
      say: "Going back, point the butt end at the heel stick.",
    },
    {
      checkpoint: "arm-level-down",
      wanted: { from: { line: "ball-line", offset: -0.15 }, to: { line: "ball-line", offset: 0.05 } },
      cue: { direction: "beyond-ball", usual: { band: "beyond-ball" } },
      say: "Coming down, point the butt end well beyond the ball stick.",
    },
  ],
  corridor: { band: "ball-line" },
  layOut: [
    "One stick through the ball towards the target.",
    "One stick along the toes and one along the heels, both parallel to the first.",
    "The bright rod along the shaft, standing out of the butt end, for slow rehearsals only.",
  ],
  say: [
    "Back: club head over the ball stick, then butt end at the heel stick.",
    "Down: butt end beyond the ball stick.",
    "Aim where the screen says felt, not where it says wanted.",
  ],
  cautions: rodCautions,
};
