import { type Drill, emptyDrill } from '@icewright/book';
import type { ActId, IcePoint, SpotId } from '@icewright/engine';

/** Short hands for drills in the tests of this folder. Ids are the names, roles the names in capitals. */

export const at = (xM: number, yM: number): IcePoint => ({ xM, yM });

export const bareDrill = (): Drill =>
  emptyDrill({
    title: 'x',
    level: 'collegeWomen',
    rink: { preset: '200x85ft' },
    madeAt: '2026-11-25T12:00:00Z',
  });

/** Spots three metres apart along the long axis, on bare ice. */
export const drillWith = ({ spots }: { readonly spots: readonly string[] }): Drill => ({
  ...bareDrill(),
  spots: Object.fromEntries(
    spots.map((name, rank) => [
      name as SpotId,
      {
        rank,
        side: 'us',
        kind: 'skater',
        role: name.toUpperCase(),
        atM: at(3 * rank, 0),
        facingRad: 0,
        waitingCount: 0,
        acts: {} as Record<ActId, never>,
      },
    ]),
  ) as Drill['spots'],
});
