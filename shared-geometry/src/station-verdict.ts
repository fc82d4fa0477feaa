/** Why a station cannot be used. A closed list: each has a sentence and something to do. */
export const stationRefusals = [
  "too-few-sticks",
  "distances-not-in-order",
  "not-a-place",
  "too-short",
  "mirrored",
  "not-parallel",
  "distances-contradict",
  "tilt-contradicts",
  "camera-on-ground",
  "not-behind-golfer",
  "does-not-fit",
] as const;

export type StationRefusal = (typeof stationRefusals)[number];

/** What was wrong, and what to do about it, as the golfer reads it. */
export const refusalSentences: Readonly<Record<StationRefusal, { readonly wrong: string; readonly cure: string }>> = {
  "too-few-sticks": {
    wrong: "Fewer than two sticks are marked, or the ball line is not among them.",
    cure: "Mark the stick on the ball line and at least one other.",
  },
  "distances-not-in-order": {
    wrong:
      "The distances do not make a station: the toe line must lie beyond the ball line and the heel line beyond the toe line.",
    cure: "Measure from the ball line to the toes and to the heels again and enter both in metres.",
  },
  "not-a-place": {
    wrong: "A stick's end has no place in the picture.",
    cure: "Drag both handles of each stick onto its ends.",
  },
  "too-short": {
    wrong: "The sticks look too short in the picture to tell where the phone stands.",
    cure: "Bring the phone nearer, to about four metres behind the ball, or raise it to hand height.",
  },
  mirrored: {
    wrong: "The picture shows the station the other way round.",
    cure: "Check whether right-handed or left-handed is set, which stick is on the ball line, and that the phone stands behind the golfer.",
  },
  "not-parallel": {
    wrong: "The sticks are not parallel.",
    cure: "Lay them parallel to the ball line and mark them again.",
  },
  "distances-contradict": {
    wrong: "The distances between the sticks are not the ones that were entered.",
    cure: "Measure the toe line and the heel line from the ball line again, and check the sticks' length.",
  },
  "tilt-contradicts": {
    wrong: "The phone's tilt sensor and the sticks disagree about which way is up.",
    cure: "Check that the sticks lie flat on level ground, then mark them again.",
  },
  "camera-on-ground": {
    wrong: "The phone stands too low to see the sticks apart.",
    cure: "Raise the phone to hand height, 0.8 to 1.0 metres.",
  },
  "not-behind-golfer": {
    wrong: "The phone does not look along the target line from behind the golfer.",
    cure: "Stand the phone about four metres behind the ball, looking along the sticks.",
  },
  "does-not-fit": {
    wrong: "No place of the phone explains where the sticks are seen.",
    cure: "Check that each handle sits on its own stick, and that the sticks' length is right.",
  },
};

const knownRoughly = "The phone's place is known only roughly; readings are a little less sure.";

/** Why a station serves, but not as well as it could. */
export type StationCaution = "marks-rough" | "two-spread-wide" | "spread-wide";

export const cautionSentences: Readonly<Record<StationCaution, { readonly wrong: string; readonly cure: string }>> = {
  "marks-rough": {
    wrong: "The sticks are marked or laid roughly; readings are a little less sure.",
    cure: "Drag the handles closer onto the sticks' ends.",
  },
  "two-spread-wide": { wrong: knownRoughly, cure: "Use a third stick, or bring the phone nearer." },
  "spread-wide": { wrong: knownRoughly, cure: "Bring the phone nearer." },
};
