/** The samples of the last so many milliseconds, oldest first. They are looked for from the newest on: a rep's are many. */
export function lately<Sample extends { readonly t: number }>(
  kept: readonly Sample[],
  milliseconds: number,
): readonly Sample[] {
  const from = (kept[kept.length - 1]?.t ?? 0) - milliseconds;
  return kept.slice(kept.findLastIndex(({ t }) => t < from) + 1);
}
