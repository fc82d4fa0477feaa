import type { BandId } from "@overcue/shared-geometry/bands";
import type { PlaceCheckpoint } from "../drill/drill-schema.ts";
import { middleOf, resolveBand } from "../drill/resolve-stretch.ts";
import type { GolferBook } from "./state.ts";
import { layoutOf } from "./targets.ts";

/**
 * The golfer said which band the rep felt like: kept beside what was measured (the band's middle stands for what was felt), and the answer that waited
 * for it is shown. An answer about a rep that was not read there changes nothing but that.
 */
export function answerFelt(book: GolferBook, repId: string, checkpoint: PlaceCheckpoint, band: BandId): GolferBook {
  const shown =
    book.heldBack?.verdict.repId === repId ? { ...book, verdict: book.heldBack.verdict, heldBack: null } : book;
  const rep = book.session?.reps.find((each) => each.repId === repId);
  const place = rep?.places.find((each) => each.checkpoint === checkpoint);
  if (!place) return shown;
  const gap = { repId, checkpoint, felt: middleOf(resolveBand(band, layoutOf(book))), measured: place.y };
  const others = book.feltGaps.filter((each) => each.repId !== repId || each.checkpoint !== checkpoint);
  return { ...shown, feltGaps: [...others, gap] };
}
