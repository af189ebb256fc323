import { emptyDrill } from '@icewright/book';
import type { ActId, SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import {
  endOfRoutes,
  routePulled,
  spotMoved,
  throughAdded,
  throughMoved,
  throughRemoved,
} from './route-writes.ts';
import { afterWrites } from './write.ts';

const f1 = 'f1' as SpotId;
const go = 'go' as ActId;
const base = {
  ...emptyDrill({
    at: '2026-11-25T12:00:00Z',
    title: 'x',
    level: 'u18',
    rink: { preset: '200x85ft' },
  } as never),
  spots: {
    [f1]: {
      rank: 0,
      side: 'us',
      kind: 'skater',
      role: 'F1',
      atM: { xM: 0, yM: 0 },
      facingRad: 0,
      waitingCount: 0,
      acts: {},
    },
  },
  pucks: { p: { atM: { xM: 0.6, yM: 0.2 }, ownerSpot: f1, count: 1 } },
} as unknown as ReturnType<typeof emptyDrill>;

describe('hand work on the board', () => {
  it('a spot that is set down elsewhere takes its puck along and leaves the old drill alone', () => {
    const moved = afterWrites(base, spotMoved(base, f1, { xM: 5, yM: -3 }));
    expect(moved.spots[f1]?.atM).toEqual({ xM: 5, yM: -3 });
    const puck = Object.values(moved.pucks)[0];
    expect(puck?.atM.xM).toBeCloseTo(5.6);
    expect(puck?.atM.yM).toBeCloseTo(-2.8);
    expect(base.spots[f1]?.atM).toEqual({ xM: 0, yM: 0 });
  });

  it('a route is pulled, grows, bends, and goes with its last point', () => {
    const pulled = afterWrites(base, routePulled(base, f1, { xM: 4, yM: 0 }, go, true));
    expect(pulled.spots[f1]?.acts[go]).toMatchObject({ kind: 'carry', throughM: [{ xM: 4, yM: 0 }] });
    const grown = afterWrites(pulled, routePulled(pulled, f1, { xM: 9, yM: 1 }, 'other' as ActId, true));
    expect(Object.keys(grown.spots[f1]?.acts ?? {})).toEqual(['go']);
    const bent = afterWrites(grown, throughAdded(grown, f1, go, 1, { xM: 6, yM: 3 }));
    expect(endOfRoutes(bent.spots[f1] as never)).toEqual({ xM: 9, yM: 1 });
    const dragged = afterWrites(bent, throughMoved(bent, f1, go, 1, { xM: 6, yM: 2 }));
    expect(dragged.spots[f1]?.acts[go]).toMatchObject({ throughM: [{ xM: 4 }, { xM: 6, yM: 2 }, { xM: 9 }] });
    const left = [0, 0, 0].reduce(
      (drill, at) => afterWrites(drill, throughRemoved(drill, f1, go, at)),
      dragged,
    );
    expect(left.spots[f1]?.acts).toEqual({});
  });
});
