import type { Drill } from '@icewright/book';
import type { ActId, SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { actsOf } from '../route-writes.ts';
import { afterWrites } from '../write.ts';
import { at, drillWith } from './drill-of-tests.reference.ts';
import { routeSplit, routeSplitBetween, routesJoined } from './route-cut.ts';

const f1 = 'f1' as SpotId;
const go = 'go' as ActId;
const on = 'on' as ActId;
const act = {
  rank: 0,
  kind: 'skate',
  throughM: [at(3, 0), at(6, 1), at(9, 0)],
  facing: 'forward',
  effortRatio: 1,
  stops: true,
  cue: { on: 'whistle' },
};
const base = afterWrites(drillWith({ spots: ['f1'] }), [
  { path: ['spots', 'f1', 'acts', 'go'], value: act },
  { path: ['spots', 'f1', 'acts', 'last'], value: { rank: 1, kind: 'hold', seconds: 1 } },
]);
const orderOf = (drill: Drill) => actsOf(drill.spots[f1]!).map(([id]) => id as string);

describe('a route cut in two', () => {
  it('the second part begins where the first ends, at once, before what came next', () => {
    const cut = afterWrites(base, routeSplit(base, f1, go, 1, on)!);
    expect(orderOf(cut)).toEqual(['go', 'on', 'last']);
    expect(cut.spots[f1]?.acts[go]).toMatchObject({
      throughM: [at(3, 0), at(6, 1)],
      stops: false,
      cue: { on: 'whistle' },
    });
    expect(cut.spots[f1]?.acts[on]).toMatchObject({ throughM: [at(9, 0)], stops: true });
    expect(cut.spots[f1]?.acts[on]?.cue).toBeUndefined();
  });

  it('joined again it is what it was', () => {
    const cut = afterWrites(base, routeSplit(base, f1, go, 0, on)!);
    const joined = routesJoined(cut, f1, go);
    expect('writes' in joined && afterWrites(cut, joined.writes)).toEqual(base);
  });

  it('between two points it is bent there', () => {
    const cut = afterWrites(base, routeSplitBetween(base, f1, go, 1, at(4.5, 2), on)!);
    expect(cut.spots[f1]?.acts[go]).toMatchObject({ throughM: [at(3, 0), at(4.5, 2)] });
    expect(cut.spots[f1]?.acts[on]).toMatchObject({ throughM: [at(6, 1), at(9, 0)] });
  });

  it('has nothing to part at its end, and says why two cannot be one', () => {
    expect(routeSplit(base, f1, go, 2, on)).toBeNull();
    expect(routesJoined(base, f1, go)).toEqual({ notNow: 'no route comes next' });
    const cut = afterWrites(base, routeSplit(base, f1, go, 0, on)!);
    const waits = afterWrites(cut, [
      { path: ['spots', 'f1', 'acts', 'on', 'cue'], value: { on: 'after', seconds: 1 } },
    ]);
    expect(routesJoined(waits, f1, go)).toEqual({ notNow: 'the next one waits for its cue' });
  });
});
