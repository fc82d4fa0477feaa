import type { SetUpCheckId } from "@overcue/shared-geometry/wire/set-up-checks";

export interface CheckWords {
  /** What is right when the check is ok. */
  readonly good: string;
  /** What to do when it is not. */
  readonly todo: string;
}

/** Words for the phone's own checks. */
export const checkWords: Readonly<Record<SetUpCheckId, CheckWords>> = {
  certificate: {
    good: "Phone trusts this laptop",
    todo: "Open the trust page on the phone once, or go on past its warning.",
  },
  "camera-level": { good: "Phone upright and level", todo: "Turn the phone upright and level it." },
  "camera-height": { good: "Lens at hand height", todo: "Set the lens to the height of your hands, 0.8 to 1 metre." },
  "camera-distance": {
    good: "Phone far enough behind",
    todo: "Stand the phone 3.5 to 4.5 metres behind the ball.",
  },
  "hand-line": {
    good: "Phone on the hand line",
    todo: "Move the phone sideways until it looks along the line of your hands.",
  },
  "body-in-frame": {
    good: "Whole body in the picture",
    todo: "Stand at the ball; tilt the phone until head and feet are in.",
  },
  "club-at-top": {
    good: "Club in the picture at the top",
    todo: "Swing slowly to the top once and stay: the club must stay in the picture.",
  },
  light: { good: "Light enough", todo: "More light on you, or the sun behind the phone." },
  "frame-rate": { good: "Frames fast enough", todo: "Close other apps on the phone; in poor light swing slowly." },
  sticks: { good: "Sticks found", todo: "Lay the three sticks and mark them on the phone." },
  "rod-colour": { good: "Rod colour known", todo: "Tap the rod in the phone’s picture." },
  "space-clear": { good: "Space clear", todo: "Look round and up, then tick “space clear” here or on the phone." },
};

/** A check by an id that this page does not know yet: its id as words. */
export const unknownCheckWords = (id: string): CheckWords => ({
  good: capital(id.replaceAll("-", " ")),
  todo: `Look at “${id.replaceAll("-", " ")}” on the phone.`,
});

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
