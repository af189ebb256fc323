import type { Level } from '../skater/level.ts';
import type { IcePoint } from '../units/points.ts';
import type { PuckPlace } from './drill.ts';
import type { PlayableSpot, PuckStart } from './playable-parts.ts';

/**
 * One rep uses one puck: that of the first act that needs one. Among the spots that carry, pass or shoot and have a
 * puck on the stick or within a lunge, the one whose act comes earliest wins: not waiting for a puck first, then
 * the lower place in its list of acts, then a puck already on the stick, then the rank of the spot. When nobody who needs a puck
 * has one, the first puck of the plan lies where it is drawn. Null when there is no puck.
 */
export const puckStartOf = (
  pucks: Readonly<Record<string, PuckPlace>>,
  spots: readonly PlayableSpot[],
  level: Level,
): PuckStart | null => {
  const places = Object.entries(pucks)
    .filter(([, place]) => place.count > 0)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([, place]) => place);
  let best: { start: PuckStart; order: readonly number[] } | null = null;
  spots.forEach((spot, rank) => {
    const needAt = spot.acts.findIndex(act => isPuckAct(act.kind));
    if (needAt < 0) return;
    const own = places.find(place => place.ownerSpot === spot.id);
    const near = places.find(
      place => place.ownerSpot === undefined && isWithin(place.atM, spot.atM, level.model.lungeReachM),
    );
    const place = own ?? near;
    if (!place) return;
    const waits = spot.acts.slice(0, needAt + 1).some(act => act.cue?.on === 'receive');
    const order = [waits ? 1 : 0, needAt, own ? 0 : 1, rank];
    if (best === null || isBefore(order, best.order)) {
      best = { start: { atM: own ? spot.atM : place.atM, ownerSpot: spot.id }, order };
    }
  });
  const found = best as { start: PuckStart } | null;
  if (found) return found.start;
  const first = places.find(place => place.ownerSpot !== undefined) ?? places[0];
  return first ? { atM: first.atM, ownerSpot: first.ownerSpot ?? null } : null;
};

export const isPuckAct = (kind: string): boolean => kind === 'carry' || kind === 'pass' || kind === 'shoot';

const isWithin = (aM: IcePoint, bM: IcePoint, distanceM: number): boolean =>
  Math.hypot(aM.xM - bM.xM, aM.yM - bM.yM) <= distanceM;

const isBefore = (a: readonly number[], b: readonly number[]): boolean => {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && a[at]! < b[at]!;
};
