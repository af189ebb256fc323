import type { ActId, Id, SpotId } from '@icewright/engine';
import { describe, expect, it } from 'vitest';
import { drillWith } from './drill-of-tests.reference.ts';
import {
  everything,
  isPicked,
  leadOf,
  NOTHING,
  pickedAct,
  pickedSpot,
  pressed,
  selectionOf,
  spotsPicked,
  stillThere,
  toggled,
} from './selection.ts';

const f1 = pickedSpot('f1' as SpotId);
const f2 = pickedSpot('f2' as SpotId);
const go = pickedAct('f1' as SpotId, 'go' as ActId);

describe('what is selected', () => {
  it('a press picks one; with Shift it adds, and lets go of what was picked', () => {
    expect(pressed([f1, f2], go, false)).toEqual([go]);
    expect(pressed([f1], f2, true)).toEqual([f1, f2]);
    expect(pressed([f1, f2], f1, true)).toEqual([f2]);
  });

  it('a press on one of several keeps them all, so that they can be dragged, and makes it lead', () => {
    expect(pressed([f1, f2], f1, false)).toEqual([f2, f1]);
    expect(leadOf([f2, f1])).toEqual({ spotId: 'f1', actId: null });
  });

  it('picked twice is let go; the act leads with its spot', () => {
    expect(toggled(toggled(NOTHING, go), { ...go })).toEqual([]);
    expect(leadOf([f2, go])).toEqual({ spotId: 'f1', actId: 'go' });
    expect(leadOf([{ kind: 'gear', gear: 'g' as Id<'gear'> }])).toEqual({ spotId: null, actId: null });
  });

  it('goes to one chosen spot and back', () => {
    for (const selection of [NOTHING, [f1], [go]]) expect(selectionOf(leadOf(selection))).toEqual(selection);
  });

  it('forgets what the drill no longer has, and is the same list when it has all', () => {
    const drill = drillWith({ spots: ['f1'] });
    expect(stillThere([f1, f2, go], drill)).toEqual([f1]);
    const whole = [f1];
    expect(stillThere(whole, drill)).toBe(whole);
  });

  it('takes everything that stands on the ice', () => {
    const all = everything(drillWith({ spots: ['f1', 'f2'] }));
    expect(spotsPicked(all)).toEqual(new Set(['f1', 'f2']));
    expect(isPicked(all, go)).toBe(false);
  });
});
