import type { Drill } from "../drill-schema.ts";
import { spaceCautions } from "./cautions.ts";

/** The first third of the swing by itself. */
export const takeawayAlone: Drill = {
  format: "overcue-drill/1",
  id: "first-third",
  name: "First third",
  summary: "The takeaway alone: the club head stays over the ball stick, then comes no farther in than the toe stick.",
  source: "common practice, no source",
  suits: "any",
  checkpoints: [
    {
      checkpoint: "takeaway",
      wanted: { band: "ball-line" },
      cue: { direction: "beyond-ball", usual: { band: "beyond-ball" } },
      say: "Send the club head back just beyond the ball stick.",
    },
    {
      checkpoint: "shaft-level-back",
      wanted: { band: "ball-to-toe" },
      cue: { direction: "beyond-ball", usual: { band: "ball-line" } },
      say: "Level shaft: club head over the ball stick.",
    },
  ],
  corridor: { band: "ball-line" },
  layOut: ["One stick through the ball towards the target.", "One stick along the toes, parallel to the first."],
  say: ["Club head along the ball stick.", "Stop with the shaft level and look where the club head hangs."],
  cautions: spaceCautions,
};
