import type { PhoneState } from "../session/phone-store.ts";
import { shaftWords, type Standing } from "./words.ts";

export interface PracticeStatus {
  readonly standing: Standing;
  /** Four letters at most: as large as the screen is wide, it is read from the ball. */
  readonly word: string;
  /** For whoever comes nearer; empty where there is nothing to add. */
  readonly sentence: string;
}

/** What the golfer must know of the phone while practising, most urgent first. */
export function practiceStatus({
  finding,
  calibration,
  link,
  practice,
}: Pick<PhoneState, "finding" | "calibration" | "link" | "practice">): PracticeStatus {
  if (calibration === "suspect")
    return { standing: "bad", word: "Look", sentence: "Camera or sticks moved: set the sticks again." };
  if (practice?.paused === true) return { standing: "waiting", word: "Rest", sentence: "Paused: reps do not count." };
  const told = shaftWords({ finding });
  switch (told.standing) {
    case "good":
      return { standing: "good", word: "Seen", sentence: [meaning(practice), away(link)].filter(Boolean).join(" ") };
    case "waiting":
    case "open":
      return { standing: "waiting", word: "Wait", sentence: told.words };
    case "bad":
      return { standing: "bad", word: "Lost", sentence: `${told.words}.` };
  }
}

const away = (link: PhoneState["link"]): string =>
  link.is === "connected" ? "" : "Reps are kept on this phone for now.";

function meaning(practice: PhoneState["practice"]): string {
  if (practice === null) return "";
  const { mode, repsInBlock, blockSize, golfer } = practice;
  const of = `${repsInBlock} of ${blockSize}`;
  switch (mode) {
    case "baseline":
      return `${golfer.name}: baseline, ${of}, no answers yet.`;
    case "retention-test":
      return `${golfer.name}: test without answers, ${of}.`;
    case "practice":
      return `${golfer.name}: ${of} in this block.`;
  }
}
