import { rinkOf, type SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { afterWrites } from '../write.ts';
import { cueDropped } from './cue-dropped.ts';
import { at, drillWith } from './drill-of-tests.reference.ts';

const rink = rinkOf({ preset: '200x85ft' });
const route = {
  rank: 0,
  kind: 'skate',
  throughM: [at(20, 8)],
  facing: 'forward',
  effortRatio: 1,
  stops: false,
};
const drill = afterWrites(drillWith({ spots: ['f1', 'f2', 'f3'] }), [
  { path: ['spots', 'f1', 'acts', 'a'], value: { ...route, kind: 'hold', seconds: 1 } },
  { path: ['spots', 'f2', 'atM'], value: at(14, -6) },
  { path: ['spots', 'f2', 'acts', 'b'], value: route },
]);
const dropped = (xM: number, yM: number, plan = drill) =>
  cueDropped({ drill: plan, rink, run: null, spotId: 'f1' as SpotId, actId: 'a' as never, atM: at(xM, yM) });

describe('the lozenge of an act let go', () => {
  it('on a spot waits for what that spot does with the puck, else for the end of its route', () => {
    expect(dropped(14.3, -5.5).cue).toEqual({ on: 'reaches', spot: 'f2', atM: at(20, 8), withinM: 1.5 });
    const pass = { rank: 0, kind: 'pass', toSpot: 'f2', way: 'direct', speedMps: 12 };
    const passed = afterWrites(drill, [{ path: ['spots', 'f3', 'acts', 'c'], value: pass }]);
    expect(dropped(14.3, -5.5, passed).cue).toEqual({ on: 'receive', spot: 'f2' });
  });

  it('on a line waits for the puck, on bare ice for who comes there', () => {
    expect(dropped(0.3, 9).cue).toEqual({ on: 'puckCrosses', line: 'centreLine' });
    expect(dropped(18, 3).cue).toEqual({ on: 'reaches', spot: 'f2', atM: at(18, 3), withinM: 1.5 });
  });

  it('on who does nothing is refused, with the reason', () => {
    expect(dropped(6, 0)).toMatchObject({ cue: null, said: 'F3 does nothing that could start it' });
    const alone = afterWrites(drill, [{ path: ['spots', 'f2', 'acts', 'b'], value: undefined }]);
    expect(dropped(18, 3, alone)).toMatchObject({ cue: null, said: 'nobody comes here who could start it' });
  });
});
