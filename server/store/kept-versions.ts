const hourMs = 3_600_000;

/**
 * Which versions to keep, newest first: all of the last two days, one a day for a year, one a month before that; and
 * always an original, as it was before a newer program rewrote the document in its own form.
 */
export function keptVersions<Version extends { readonly at: number; readonly isOriginal?: number }>(
  newestFirst: readonly Version[],
  nowMs: number,
): Version[] {
  const taken = new Set<number>();
  return newestFirst.filter(({ at, isOriginal = 0 }) => {
    if (isOriginal === 1) return true;
    const ageMs = nowMs - at;
    if (ageMs < 48 * hourMs) return true;
    const spanMs = ageMs < 366 * 24 * hourMs ? 24 * hourMs : 30 * 24 * hourMs;
    // Days and months are told apart by sign, so that a number of one is never taken for the other's.
    const slot = spanMs === 24 * hourMs ? Math.floor(at / spanMs) : -1 - Math.floor(at / spanMs);
    if (taken.has(slot)) return false;
    taken.add(slot);
    return true;
  });
}
