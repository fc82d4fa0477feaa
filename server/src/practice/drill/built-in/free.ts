import type { Drill } from "../drill-schema.ts";
import { rodCautions } from "./cautions.ts";

/** Any checkpoint, any band: the golfer or the coach says which (`set-wanted`). */
export const free: Drill = {
  format: "overcue-drill/1",
  id: "free",
  name: "Free",
  summary: "Any checkpoint, any band: choose what is wanted and leave out the rest.",
  source: "your own choice",
  suits: "any",
  checkpoints: [],
  corridor: null,
  layOut: ["One stick through the ball towards the target.", "A second stick along the toes, parallel to the first."],
  say: ["Aim the club at the stick or the ground that the screen names."],
  cautions: rodCautions,
};
