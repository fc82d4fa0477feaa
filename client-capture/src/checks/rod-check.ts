import type { RodColour } from "../shaft/rod-likeness.ts";
import type { SetUpCheck } from "./set-up-check.ts";

/** What is known of the practice rod's colour: nothing yet, that none is used or has a colour, or the colour of one tap. */
export type RodChoice =
  { readonly is: "not-said" } | { readonly is: "none" } | { readonly is: "known"; readonly colour: RodColour };

/** `rodOn`: whether the rod belongs on the club in this stage. */
export function rodCheck(rod: RodChoice, rodOn: boolean): SetUpCheck {
  const id = "rod-colour";
  switch (rod.is) {
    case "known":
      return { id, state: "ok", words: "Rod colour known", todo: "" };
    case "none":
      return { id, state: "ok", words: "No coloured rod", todo: "" };
    case "not-said":
      return rodOn
        ? {
            id,
            state: "not-yet",
            words: "Rod colour not known",
            todo: "Tap the rod in the phone's picture, or say that there is none.",
          }
        : { id, state: "ok", words: "No rod in this stage", todo: "" };
  }
}
