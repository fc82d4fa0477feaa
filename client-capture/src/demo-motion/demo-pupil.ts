import { placesOf } from "./demo-golfer-settings.ts";
import type { DemoPupil } from "./next-demo-rep.ts";

/** The invented golfer of the phone's demonstration: plainly flat going back and steep coming down, half of a felt change arrives. */
export const demoPupil: DemoPupil = { habit: placesOf(1), carryOver: 0.5 };
