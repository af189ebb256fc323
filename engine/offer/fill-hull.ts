/**
 * The pixels (1 each) within the convex hull of some cells of `cellPx` pixels, whose number counts row by row over
 * `acrossCount` of them; each > 0. Source: Andrew 1979, Information Processing Letters 9, 216 (monotone chain; from memory).
 */
export const fillHull = (
  cells: readonly number[],
  acrossCount: number,
  cellPx: number,
  widthPx: number,
  heightPx: number,
): Uint8Array => {
  const filled = new Uint8Array(widthPx * heightPx);
  const hull = hullOf(endsOfRows(cells, acrossCount, cellPx));
  for (let y = 0; y < heightPx; y++) {
    let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const [index, [ax, ay]] of hull.entries()) {
      const [bx, by] = hull[(index + 1) % hull.length]!;
      const middle = y + 0.5;
      if ((ay <= middle && by <= middle) || (ay > middle && by > middle)) continue;
      const x = ax + ((middle - ay) * (bx - ax)) / (by - ay);
      from = Math.min(from, x);
      to = Math.max(to, x);
    }
    if (from < to)
      filled.fill(1, y * widthPx + Math.ceil(from), y * widthPx + Math.min(widthPx, Math.floor(to)));
  }
  return filled;
};

type Corner = readonly [xPx: number, yPx: number];

/** The corners of the first and last cell of each row: no other can be on the hull. Ascending in x, then y. */
const endsOfRows = (cells: readonly number[], acrossCount: number, cellPx: number): Corner[] => {
  const ends = new Map<number, [first: number, last: number]>();
  for (const cell of cells) {
    const x = cell % acrossCount;
    const y = (cell - x) / acrossCount;
    const row = ends.get(y);
    if (row === undefined) ends.set(y, [x, x]);
    else ends.set(y, [Math.min(row[0], x), Math.max(row[1], x)]);
  }
  const corners: Corner[] = [];
  for (const [y, [first, last]] of ends) {
    for (const x of [first, last + 1]) corners.push([x * cellPx, y * cellPx], [x * cellPx, (y + 1) * cellPx]);
  }
  return corners.sort(([ax, ay], [bx, by]) => ax - bx || ay - by);
};

const hullOf = (corners: readonly Corner[]): Corner[] => [
  ...chainOf(corners),
  ...chainOf([...corners].reverse()),
];

const chainOf = (corners: readonly Corner[]): Corner[] => {
  const chain: Corner[] = [];
  for (const corner of corners) {
    while (chain.length > 1 && !turnsLeft(chain[chain.length - 2]!, chain[chain.length - 1]!, corner))
      chain.pop();
    chain.push(corner);
  }
  chain.pop();
  return chain;
};

const turnsLeft = ([ax, ay]: Corner, [bx, by]: Corner, [cx, cy]: Corner): boolean =>
  (bx - ax) * (cy - ay) - (by - ay) * (cx - ax) > 0;
