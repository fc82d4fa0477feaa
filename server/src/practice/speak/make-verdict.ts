import { decideBand } from "@overcue/shared-geometry/decide-band";
import { bandAt } from "@overcue/shared-geometry/band-interval";
import { bandLabels, type BandLayout } from "@overcue/shared-geometry/bands";
import { normalBelow } from "@overcue/shared-geometry/normal-probability";
import type { Metres } from "@overcue/shared-geometry/units";
import type { Verdict } from "@overcue/shared-geometry/wire/practice";
import type { GroundStretch } from "../drill/resolve-stretch.ts";
import { carryOverOf } from "../figures/carry-over.ts";
import type { Place } from "../figures/place.ts";
import { feltPlace, type Target } from "../journal/targets.ts";
import { practiceSettings } from "../settings.ts";
import { bandInWords, shortLabel } from "../view/words.ts";

interface Answer {
  readonly target: Target;
  readonly place: Place;
  readonly off: boolean;
}

/**
 * What is told after a rep (or, as a summary, of the medians of a block): the band at each checkpoint that matters, and the next cue. `before` and `after` are said
 * first and last. Null where the drill's checkpoints were not read.
 */
export function makeVerdict(question: {
  readonly repId: string;
  readonly places: readonly Place[];
  readonly targets: readonly Target[];
  readonly layout: BandLayout;
  readonly summary: boolean;
  readonly before: string;
  readonly after: string;
}): Verdict | null {
  const { repId, places, targets, layout, summary } = question;
  const answers = targets.flatMap((target): Answer[] => {
    const place = places.find(({ checkpoint }) => checkpoint === target.checkpoint);
    return place ? [{ target, place, off: isOff(place, target) }] : [];
  });
  if (answers.length === 0) return null;
  const inside = !answers.some(({ off }) => off);
  const sentences = [question.before, summary ? "Block:" : "", ...said(answers, inside, layout), question.after];
  return {
    repId,
    kind: summary ? "summary" : inside ? "inside" : "answer",
    sentence: sentences.filter((sentence) => sentence !== "").join(" "),
    places: answers.map(({ target, place }) => ({
      checkpoint: target.checkpoint,
      y: place.y,
      sd: place.sd,
      inWanted: claimInside(place, target.wanted),
      carryOver:
        target.baseline && target.change !== null
          ? (carryOverOf(place, target.baseline, target.change)?.value ?? null)
          : null,
    })),
  };
}

function said(answers: readonly Answer[], inside: boolean, layout: BandLayout): readonly string[] {
  const worth = answers.filter(({ target, off }) => off || target.exaggerates);
  const places = (worth.length > 0 ? worth : answers).map(
    ({ target, place }) =>
      `${capital(shortLabel(target.checkpoint))}: ${bandInWords(decideBand(place.y, place.sd, layout))}.`,
  );
  const cued = worth.map(({ target }) => target).filter(({ exaggerates }) => exaggerates);
  const feel = cued.map(
    (target) => `${shortLabel(target.checkpoint)} ${bandLabels[bandAt(feltPlace(target), layout)]}`,
  );
  return [...places, inside ? "Same again." : feel.length > 0 ? `Feel: ${feel.join(", ")}.` : ""];
}

const capital = (word: string): string => word.charAt(0).toUpperCase() + word.slice(1);

/** Off enough to be told: farther outside of the wanted stretch than the measurement's error and than 15 % of the wanted change. */
function isOff(place: Place, { wanted, change }: Target): boolean {
  const outside = Math.max(wanted.from - place.y, place.y - wanted.to, 0);
  return outside > Math.max(place.sd, practiceSettings.speak.silentWithin * Math.abs(change ?? 0));
}

/** Inside, outside, or null where the odds are under the setting: nothing is claimed then. */
export function claimInside(
  { y, sd }: { readonly y: Metres; readonly sd: Metres },
  wanted: GroundStretch,
): boolean | null {
  if (sd === 0) return y >= wanted.from && y <= wanted.to;
  const odds = normalBelow((wanted.to - y) / sd) - normalBelow((wanted.from - y) / sd);
  if (odds >= practiceSettings.speak.claimOdds) return true;
  return odds <= 1 - practiceSettings.speak.claimOdds ? false : null;
}
