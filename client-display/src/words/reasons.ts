import type { ShaftReason } from "@overcue/shared-geometry/image-shaft";
import type { UndefinedReason } from "@overcue/shared-geometry/read-outs";
import type { NotCountedReason } from "@overcue/shared-geometry/wire/rep";

/** In two or three words, for the place of the band's word. */
export const shaftReasonWords: Readonly<Record<ShaftReason, string>> = {
  "no-hands": "hands not seen",
  walking: "walking",
  "no-line-found": "shaft not seen",
  ambiguous: "two lines seen",
  "end-on": "shaft end-on",
  "blurred-away": "too blurred",
  "out-of-picture": "out of picture",
  "hands-hidden": "hands hidden",
  starting: "starting",
};

export const undefinedReasonWords: Readonly<Record<UndefinedReason, string>> = {
  "not-read-here": "not read here",
  "too-flat": "shaft too level",
  "points-up": "points up",
  "shaft-not-seen": "shaft not seen",
  "no-camera": "no camera yet",
  "too-fast": "too fast",
  "too-uncertain": "too uncertain",
};

/** A swing that looked like a rep: why it is none, and what to do. */
export const notCountedWords: Readonly<Record<NotCountedReason, string>> = {
  "club-lost": "Not counted: the club was out of sight. Keep it in the picture.",
  "too-long": "Not counted: too long for one rep. Start again from the ball.",
  "no-impact": "Not counted: not seen coming through the ball. Swing on through it.",
};
