import type { Drill } from '@icewright/book';
import type { IcePoint, SpotId } from '@icewright/engine';
import { actsOf, isRoute, spotsOf } from '../route-writes.ts';
import { HALF_TURN, MIRROR_ACROSS, MIRROR_ALONG } from './place-map.ts';
import type { SnapTo } from './snap.ts';

const MIRRORS = [
  { map: MIRROR_ALONG, said: 'mirror of' },
  { map: MIRROR_ACROSS, said: 'mirror over the red line of' },
  { map: HALF_TURN, said: 'half turn of' },
] as const;

/**
 * What the others of a drill draw a hand to: level with them, in their lane, and the three places of symmetry; the same of the
 * points of their routes, and where those end. `held` are the spots in the hand, which draw nothing; `own` is a spot whose route is in
 * the hand: it draws by its place, not by its points.
 */
export const othersSnaps = (
  drill: Drill,
  held: ReadonlySet<SpotId>,
  own: SpotId | null = null,
): readonly SnapTo[] =>
  spotsOf(drill).flatMap(([id, spot]) => {
    if (held.has(id)) return [];
    const points = id === own ? [] : actsOf(spot).flatMap(([, act]) => (isRoute(act) ? act.throughM : []));
    const end = points.at(-1);
    return [
      ...mirrorsOf(spot.atM, spot.role),
      { kind: 'x', xM: spot.atM.xM, words: `level with ${spot.role}`, fromM: spot.atM } as const,
      { kind: 'y', yM: spot.atM.yM, words: `in the lane of ${spot.role}`, fromM: spot.atM } as const,
      ...points.flatMap(atM => mirrorsOf(atM, `the route of ${spot.role}`)),
      ...(end === undefined
        ? []
        : [{ kind: 'point', atM: end, words: `where the route of ${spot.role} ends` } as const]),
    ];
  });

/** A place on an axis is its own mirror: nothing to be drawn to. */
const OWN_M = 0.3;

const mirrorsOf = (fromM: IcePoint, whose: string): SnapTo[] =>
  MIRRORS.flatMap(({ map, said }) => {
    const atM = map.point(fromM);
    const awayM = Math.hypot(atM.xM - fromM.xM, atM.yM - fromM.yM);
    return awayM < OWN_M ? [] : [{ kind: 'point', atM, words: `${said} ${whose}`, fromM }];
  });
