import type { PlayableSpot } from '../drill/playable-parts.ts';
import type { SpotId } from '../units/ids.ts';
import type { MendCandidate, MendCase } from './mend.ts';
import { actThen, rounded, spotOf } from './mend-places.ts';
import { ACT_ADDED, PUCK_ADDED } from './mend-rows.ts';

/** A puck for who goes without: on the stick, fetched, from a greater heap, or the heap laid within reach. */
export const pucksBrought = (of: MendCase, id: SpotId | undefined): readonly MendCandidate[] => {
  const spot = spotOf(of, id);
  if (!spot) return [];
  return [...onStick(of, spot), ...heaps(of, spot), ...fetched(of, spot)];
};

const onStick = (of: MendCase, spot: PlayableSpot): readonly MendCandidate[] =>
  Object.values(of.plan.pucks).some(({ ownerSpot, count }) => ownerSpot === spot.id && count > 0)
    ? []
    : [
        {
          says: { verb: 'givePuck', spot: spot.id, number: 1, unit: 'pucks' },
          writes: [
            {
              path: ['pucks', of.newPuck],
              value: { atM: spot.atM, ownerSpot: spot.id, count: 1 },
            },
          ],
          size: PUCK_ADDED.value,
        },
      ];

const heaps = (of: MendCase, spot: PlayableSpot): readonly MendCandidate[] =>
  Object.entries(of.plan.pucks)
    .filter(([, { ownerSpot }]) => ownerSpot === undefined)
    .flatMap(([id, { atM, count }]): MendCandidate[] => {
      const farM = Math.hypot(atM.xM - spot.atM.xM, atM.yM - spot.atM.yM);
      const toM = { xM: rounded(spot.atM.xM - 0.5), yM: rounded(spot.atM.yM - 1) };
      const more = [1, 2, 3, 4, 6].map(
        (by): MendCandidate => ({
          says: { verb: 'addPucks', spot: spot.id, number: by, unit: 'pucks' },
          writes: [{ path: ['pucks', id, 'count'], value: count + by }],
          size: PUCK_ADDED.value * 0.5 * by,
        }),
      );
      const move: MendCandidate = {
        says: { verb: 'movePucks', spot: spot.id, number: rounded(farM), unit: 'm' },
        writes: [{ path: ['pucks', id, 'atM'], value: toM }],
        size: farM * 0.5,
      };
      return [...more, move];
    });

const fetched = (of: MendCase, spot: PlayableSpot): readonly MendCandidate[] => {
  const act = actThen(of, spot);
  if (!act) return [];
  const before = spot.acts[spot.acts.indexOf(act) - 1];
  const rank = before ? (before.rank + act.rank) / 2 : act.rank - 1;
  const path = ['spots', spot.id, 'acts'];
  return [
    {
      says: { verb: 'fetch', spot: spot.id, number: 0, unit: '' },
      writes: [
        {
          path: [...path, of.newAct],
          value: { rank, kind: 'pickUp', effortRatio: 1, ...(act.cue ? { cue: act.cue } : {}) },
        },
        ...(act.cue ? [{ path: [...path, act.id, 'cue'], value: undefined }] : []),
      ],
      size: ACT_ADDED.value,
    },
  ];
};
