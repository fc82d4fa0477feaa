/** Brings the next or the previous sheet of a scrolled page into view, round and round. False where it went round. */
export function turnSheet(sheets: HTMLElement | null, by: 1 | -1): boolean {
  if (sheets === null) return false;
  const tops = [...sheets.querySelectorAll<HTMLElement>(".sheet")].map(({ offsetTop }) => offsetTop);
  // A scroll position between two pixels is the sheet's own.
  const now = tops.findLastIndex((top) => top <= sheets.scrollTop + 2);
  const next = (now + by + tops.length) % tops.length;
  sheets.scrollTo({ top: tops[next] ?? 0 });
  return now + by === next;
}
