import { LEAST_PART_SHARE, WIDEST_PAINT } from './feature-rows.ts';

/**
 * Cells (1 in `isSet`, row by row) of the largest region that touches along sides, with the other regions of some size
 * that lie no farther from it than a painted line is wide. Both counts > 0; empty where nothing is set. Source: our own rule.
 */
export const joinedRegion = (isSet: Uint8Array, acrossCount: number, downCount: number): number[] => {
  const regions = regionsOf(isSet, acrossCount, downCount).sort((a, b) => b.length - a.length);
  const least = LEAST_PART_SHARE.value * isSet.length;
  const joined = [...(regions.shift() ?? [])];
  let rest = regions.filter(region => region.length >= least);
  const reach = Math.max(1, Math.round(WIDEST_PAINT.value * Math.max(acrossCount, downCount)));
  while (rest.length > 0) {
    const near = grown(joined, acrossCount, downCount, reach);
    const touching = rest.filter(region => region.some(cell => near[cell] === 1));
    if (touching.length === 0) break;
    for (const region of touching) for (const cell of region) joined.push(cell);
    rest = rest.filter(region => !touching.includes(region));
  }
  return joined;
};

/** All cells at most `reach` beside and below or above these. */
const grown = (
  cells: readonly number[],
  acrossCount: number,
  downCount: number,
  reach: number,
): Uint8Array => {
  const sideways = new Uint8Array(acrossCount * downCount);
  for (const cell of cells) {
    const x = cell % acrossCount;
    sideways.fill(1, cell - Math.min(x, reach), cell + Math.min(acrossCount - 1 - x, reach) + 1);
  }
  const both = new Uint8Array(sideways.length);
  for (let x = 0; x < acrossCount; x++) {
    let last = Number.NEGATIVE_INFINITY;
    for (let y = 0; y < downCount; y++) {
      if (sideways[y * acrossCount + x] === 1) {
        for (let above = Math.max(0, y - reach, last + 1); above < y; above++)
          both[above * acrossCount + x] = 1;
        last = y;
      }
      if (y - last <= reach) both[y * acrossCount + x] = 1;
    }
  }
  return both;
};

const regionsOf = (isSet: Uint8Array, acrossCount: number, downCount: number): number[][] => {
  const seen = new Uint8Array(isSet.length);
  const regions: number[][] = [];
  for (let start = 0; start < isSet.length; start++) {
    if (isSet[start] === 0 || seen[start] === 1) continue;
    const region = [start];
    seen[start] = 1;
    const visit = (next: number, isThere: boolean): void => {
      if (!isThere || isSet[next] === 0 || seen[next] === 1) return;
      seen[next] = 1;
      region.push(next);
    };
    for (let at = 0; at < region.length; at++) {
      const cell = region[at]!;
      const x = cell % acrossCount;
      const y = (cell - x) / acrossCount;
      visit(cell - 1, x > 0);
      visit(cell + 1, x < acrossCount - 1);
      visit(cell - acrossCount, y > 0);
      visit(cell + acrossCount, y < downCount - 1);
    }
    regions.push(region);
  }
  return regions;
};
