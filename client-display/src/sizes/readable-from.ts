import { bandIds } from "@overcue/shared-geometry/bands";
import { metres, type Metres } from "@overcue/shared-geometry/units";
import { fitChoices } from "./fit-choices.ts";
import { fitSizes } from "./fit-sizes.ts";
import type { ScreenSize, ViewingSettings } from "./viewing-sizes.ts";

export interface Readable {
  readonly meetsRule: boolean;
  /** The farthest from which everything that is read at a distance can be read by the rule. */
  readonly readableFrom: Metres;
}

/** Whether this screen can be read from the set distance: practice view and the question after a rep. */
export function readableAt(screen: ScreenSize, viewing: ViewingSettings): Readable {
  const practice = fitSizes(screen, viewing);
  const question = fitChoices(screen, viewing, bandIds.length + 1);
  const readableFrom = metres(Math.min(practice.readableFrom, question.readableFrom));
  return { meetsRule: practice.meetsRule && question.meetsRule, readableFrom };
}
