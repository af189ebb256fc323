import type { SheetPoint } from '../ice/sheet-point.ts';
import type { DrillLine, RouteLine } from './drill-line.ts';
import type { DrawnRoute } from './route.ts';

type KeptLine = RouteLine & Pick<DrillLine, 'spot' | 'act'>;

const kept = new WeakMap<DrawnRoute, KeptLine>();

/**
 * The line of a route as it was made before, the very same value, when nothing of it has changed: what was drawn of it then
 * can be shown again. What is kept goes with the route.
 */
export const keptLineOf = (route: DrawnRoute, line: KeptLine): KeptLine => {
  const before = kept.get(route);
  if (before !== undefined && isSame(before, line)) return before;
  kept.set(route, line);
  return line;
};

/** The points come from the route, and are the same while it is. */
const isSame = (one: KeptLine, other: KeptLine): boolean =>
  one.spot === other.spot &&
  one.act === other.act &&
  one.style === other.style &&
  one.backward === other.backward &&
  one.end === other.end &&
  one.pivot === other.pivot &&
  one.words === other.words &&
  isSamePlace(one.puckComesAt, other.puckComesAt) &&
  one.ticks.length === other.ticks.length &&
  one.ticks.every((tick, index) => isAt(tick, other.ticks[index]));

const isSamePlace = (one: SheetPoint | undefined, other: SheetPoint | undefined): boolean =>
  one === undefined ? other === undefined : isAt(one, other);

const isAt = (one: SheetPoint, other: SheetPoint | undefined): boolean =>
  one.x === other?.x && one.y === other.y;
